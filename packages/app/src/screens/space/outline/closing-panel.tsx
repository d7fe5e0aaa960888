import { plan } from '@undercroft/engine';
import type { Change, Ground, Outline } from '@undercroft/record';
import { useState } from 'react';
import { Button } from '../../../parts/button.tsx';
import { Choice } from '../../../parts/field.tsx';
import { Notice } from '../../../parts/notice.tsx';
import { useLength } from '../../../plan/length.ts';
import { resolved } from '../../../plan/walls.ts';
import { useTexts } from '../../../text/texts.ts';
import type { Editor } from '../draw/editor.ts';
import { optionTexts } from '../draw/kind-texts.ts';
import { type OutlineDraft, orphansOf, outlineOf } from './outline-draft.ts';
import { outlineTexts } from './outline-texts.ts';
import { closingOf } from './tape.ts';
import { WallList } from './walls-panel.tsx';

const COVERS = ['bare-earth', 'liner', 'slab', 'gravel'] as const;

/** Closes the walls: the closing error, spread or refused; what covers the floor; and then they are kept. */
export function ClosingPanel({
  editor,
  draft,
}: {
  readonly editor: Editor;
  readonly draft: OutlineDraft | null;
}) {
  const say = useTexts(outlineTexts);
  const options = useTexts(optionTexts);
  const { job } = editor.openJob.view;
  const [cover, setCover] = useState<Ground['cover'] | null>(job?.plan.ground?.cover ?? null);
  const [problem, setProblem] = useState<string | null>(null);
  const outline = draft === null ? null : outlineOf(draft);
  const faultOf = useFaultOf();
  if (draft === null || outline === null || job === null) return null;
  const closing = draft.by === 'grid' ? null : closingOf(draft.legs, draft.adjustment);
  const fault = faultOf(outline);
  const orphans = orphansOf(job, outline);
  const save = async () => {
    if (cover === null) return;
    const changes: Change[] = [
      { do: 'set', kind: 'plan', item: 'plan', field: 'outline', value: outline },
      ...(cover === job.plan.ground?.cover
        ? []
        : [{ do: 'set', kind: 'plan', item: 'plan', field: 'ground', value: { cover } } as const]),
    ];
    const result = await editor.openJob.commit(...changes);
    if ('issues' in result) return setProblem(result.issues[0].expected);
    editor.keepOutline(null);
    editor.set({ mode: { is: 'menu' }, said: say('saved') });
  };
  if (closing?.verdict === 'poor' && draft.by !== 'grid') {
    return (
      <Refused editor={editor} closing={closing}>
        <WallList editor={editor} legs={draft.legs} />
      </Refused>
    );
  }
  return (
    <div className="draw-panel">
      {closing !== null && draft.by !== 'grid' && (
        <>
          <Gap closing={closing} />
          {closing.closure.precisionDenominator !== null && (
            <Choice
              label={say('spread')}
              value={draft.adjustment}
              options={[
                ['transit', say('transit')],
                ['compass', say('compass')],
              ]}
              onChange={(adjustment) => editor.keepOutline({ ...draft, adjustment })}
            />
          )}
        </>
      )}
      {fault !== null ? (
        <Notice kind="wrong">{fault}</Notice>
      ) : (
        <>
          {orphans > 0 && <Notice kind="plain">{say('orphans', { count: orphans })}</Notice>}
          <fieldset className="draw-choice two">
            <legend>{say('floorFirst')}</legend>
            {COVERS.map((one) => (
              <Button key={one} look={one === cover ? 'main' : 'plain'} onPress={() => setCover(one)}>
                {options(one)}
              </Button>
            ))}
          </fieldset>
          <p className="soft">{say('floorHelp')}</p>
          {problem !== null && (
            <p className="problem" role="alert">
              {say('badOutline', { found: problem })}
            </p>
          )}
          <Button look="main" wide isDisabled={cover === null} onPress={() => void save()}>
            {say('save')}
          </Button>
        </>
      )}
    </div>
  );
}

/** Gives why walls make no plan, in words; null where they do. A bad closure is told apart. */
function useFaultOf(): (outline: Outline) => string | null {
  const say = useTexts(outlineTexts);
  return (outline) => {
    const { issues, usable } = resolved(outline);
    const issue = issues.find(({ code }) => code !== 'does-not-close');
    if (issue === undefined) return usable ? null : say('noArea');
    if (issue.code === 'no-area' || issue.code === 'too-few-corners') return say('noArea');
    const [first, second] = [...issue.found.matchAll(/wall (\d+)/g)].map((match) => match[1]);
    return first !== undefined && second !== undefined
      ? say('crosses', { first, second })
      : say('badOutline', { found: issue.found });
  };
}

function useGapText({ closure }: plan.TraverseResult): string {
  const say = useTexts(outlineTexts);
  const length = useLength();
  const { linearM, perimeterM, precisionDenominator } = closure;
  if (precisionDenominator === null) return say('gapNone');
  return say('gap', {
    gap: length(linearM),
    perimeter: length(perimeterM),
    precision: Math.floor(precisionDenominator),
  });
}

function Gap({ closing }: { readonly closing: plan.TraverseResult }) {
  const say = useTexts(outlineTexts);
  const gap = useGapText(closing);
  const isDoubtful = closing.verdict === 'doubtful';
  return (
    <p role="status">
      <strong>{gap}</strong>{' '}
      {closing.closure.precisionDenominator !== null &&
        (isDoubtful ? say('doubtful', { limit: plan.CLOSURE_LIMITS.acceptDenominator }) : say('good'))}
    </p>
  );
}

interface RefusedProps {
  readonly editor: Editor;
  readonly closing: plan.TraverseResult;
  readonly children: React.ReactNode;
}

/** A closing error too large to spread: where to look first, and every wall to be taped again. */
function Refused({ editor, closing, children }: RefusedProps) {
  const say = useTexts(outlineTexts);
  const length = useLength();
  const gap = useGapText(closing);
  const hints = closing.hints.slice(0, 4);
  const words = ({ kind, legIndex, changeM, changeDeg }: plan.BlunderHint) => {
    const number = legIndex + 1;
    if (kind === 'length') {
      const change = length(Math.abs(changeM ?? 0));
      return say((changeM ?? 0) > 0 ? 'hintLonger' : 'hintShorter', { number, change });
    }
    const deg = Math.round(Math.abs(changeDeg ?? 0));
    return say('hintTurn', { number, deg, way: say((changeDeg ?? 0) < 0 ? 'turnLeft' : 'turnRight') });
  };
  return (
    <div className="draw-panel">
      <Notice kind="wrong" title={gap}>
        <p>{say('poor')}</p>
      </Notice>
      <p>{say(hints.length === 0 ? 'noHint' : 'lookFirst')}</p>
      {hints.map((hint) => (
        <Button
          key={`${hint.kind} ${hint.legIndex}`}
          wide
          onPress={() =>
            editor.go({
              is: 'walls',
              step: hint.kind === 'length' ? 'length' : 'angle',
              leg: hint.legIndex,
            })
          }
        >
          {words(hint)}
        </Button>
      ))}
      {children}
    </div>
  );
}
