import { geometry } from '@undercroft/engine';
import { useState } from 'react';
import { randomName } from '../../../jobs/author.ts';
import { Button } from '../../../parts/button.tsx';
import { Choice, Field } from '../../../parts/field.tsx';
import { FigurePad } from '../../../parts/figure-pad.tsx';
import { useLength } from '../../../plan/length.ts';
import { useTexts } from '../../../text/texts.ts';
import type { Editor } from '../draw/editor.ts';
import { lastLength, rememberLength } from '../draw/last-length.ts';
import type { Mode } from '../draw/mode.ts';
import { EMPTY_DRAFTS, type OutlineDraft } from './outline-draft.ts';
import { outlineTexts } from './outline-texts.ts';
import { closingOf, cornersWalked, type Leg, lastWall } from './tape.ts';

interface WallsPanelProps {
  readonly editor: Editor;
  readonly mode: Mode & { readonly is: 'walls' };
  readonly draft: OutlineDraft | null;
}

type TapeDraft = Extract<OutlineDraft, { readonly by: 'tape' | 'rectangle' }>;

/** Walls by tape: the length of a wall, the turn at its end, and so around until they close. */
export function WallsPanel({ editor, mode, draft: held }: WallsPanelProps) {
  const draft: TapeDraft = held !== null && held.by !== 'grid' ? held : EMPTY_DRAFTS.tape;
  const again = mode.leg === undefined ? undefined : draft.legs[mode.leg];
  const keep = (legs: readonly Leg[]) => editor.keepOutline({ ...draft, legs });
  if (mode.step === 'length') {
    return (
      <LengthStep
        key={`${mode.leg ?? 'new'} ${draft.legs.length}`}
        number={(mode.leg ?? draft.legs.length) + 1}
        onDone={({ nm, typed }) => {
          if (again !== undefined) {
            keep(draft.legs.map((leg) => (leg === again ? { ...leg, nm, typed } : leg)));
            return editor.go(isDone(draft) ? { is: 'closing' } : { is: 'walls', step: 'turn' });
          }
          const turnDeg = draft.legs.length === 0 ? 0 : (mode.turnDeg ?? -90);
          keep([...draft.legs, { id: randomName(16), nm, typed, turnDeg }]);
          editor.go({ is: 'walls', step: 'turn' });
        }}
      />
    );
  }
  if (mode.step === 'angle') {
    return (
      <AngleStep
        first={again?.turnDeg}
        onDone={(turnDeg) => {
          if (again === undefined) return editor.go({ is: 'walls', step: 'length', turnDeg });
          keep(draft.legs.map((leg) => (leg === again ? { ...leg, turnDeg } : leg)));
          editor.go({ is: 'closing' });
        }}
      />
    );
  }
  return <TurnStep editor={editor} draft={draft} keep={keep} />;
}

/** Whether the walls have come around once: then one that is taped again leads back to closing them. */
const isDone = ({ legs }: TapeDraft) => {
  const closing = closingOf(legs, 'transit');
  return closing !== null && closing.closure.linearM < closing.closure.perimeterM / 10;
};

function LengthStep({
  number,
  onDone,
}: {
  readonly number: number;
  readonly onDone: (length: { readonly nm: number; readonly typed: string }) => void;
}) {
  const say = useTexts(outlineTexts);
  const [typed, setTyped] = useState('');
  return (
    <FigurePad
      label={say('wallLength', { number })}
      typed={typed}
      onType={setTyped}
      last={lastLength('wall')}
      onDone={(length) => {
        // A wall has a length; a record of none would not be taken.
        if (length.nm === 0) return;
        rememberLength('wall', length.typed);
        onDone(length);
      }}
    />
  );
}

interface TurnStepProps {
  readonly editor: Editor;
  readonly draft: TapeDraft;
  readonly keep: (legs: readonly Leg[]) => void;
}

function TurnStep({ editor, draft, keep }: TurnStepProps) {
  const say = useTexts(outlineTexts);
  const length = useLength();
  const [list, setList] = useState(false);
  const { legs } = draft;
  const corners = cornersWalked(legs);
  const gapM = geometry.distanceM(corners[0], corners[corners.length - 1]);
  const closing = closingOf(legs, draft.adjustment);
  const isBack = closing !== null && closing.verdict !== 'poor';
  const last = legs.length >= 2 ? lastWall(legs, 'last') : null;
  const turn = (turnDeg: number) => editor.go({ is: 'walls', step: 'length', turnDeg });
  return (
    <div className="draw-panel">
      <p role="status">
        <strong>{say(isBack ? 'backClosed' : 'back', { length: length(gapM) })}</strong>{' '}
        {!isBack && say('turnAfter', { number: legs.length })}
      </p>
      {legs.length === 1 && <p className="soft">{say('firstHelp')}</p>}
      {isBack && (
        <Button look="main" wide onPress={() => editor.go({ is: 'closing' })}>
          {say('close')}
        </Button>
      )}
      <div className="draw-row">
        <Button onPress={() => turn(-90)}>{say('left')}</Button>
        <Button onPress={() => turn(90)}>{say('right')}</Button>
        <Button onPress={() => editor.go({ is: 'walls', step: 'angle' })}>{say('otherAngle')}</Button>
      </div>
      {!isBack && closing !== null && (
        <Button wide onPress={() => editor.go({ is: 'closing' })}>
          {say('close')}
        </Button>
      )}
      {!isBack && last !== null && (
        <>
          <Button
            wide
            onPress={() => {
              keep([...legs, { ...last, id: randomName(16) }]);
              editor.go({ is: 'closing' });
            }}
          >
            {say('lastNotTaped', { length: length(gapM) })}
          </Button>
          <p className="soft">{say('notTapedHelp')}</p>
        </>
      )}
      <div className="draw-row">
        <Button
          onPress={() => {
            const rest = legs.slice(0, -1);
            keep(rest);
            if (rest.length === 0) editor.go({ is: 'walls', step: 'length' });
          }}
        >
          {say('takeBack')}
        </Button>
        <Button expanded={list} onPress={() => setList(!list)}>
          {say('tapeAgain')}
        </Button>
      </div>
      {list && <WallList editor={editor} legs={legs} />}
    </div>
  );
}

/** The walls taped so far; one that is tapped is taped again. */
export function WallList({ editor, legs }: { readonly editor: Editor; readonly legs: readonly Leg[] }) {
  const say = useTexts(outlineTexts);
  const length = useLength();
  return (
    <ul className="facts">
      {legs.map(({ id, nm, typed }, leg) => (
        <li key={id}>
          <Button wide onPress={() => editor.go({ is: 'walls', step: 'length', leg })}>
            <span>{say('wallLine', { number: leg + 1, length: length(nm * 1e-9) })}</span>
            <span className="soft">{typed ?? say('workedOut')}</span>
          </Button>
        </li>
      ))}
    </ul>
  );
}

function AngleStep({
  first = 90,
  onDone,
}: {
  readonly first?: number | undefined;
  readonly onDone: (turnDeg: number) => void;
}) {
  const say = useTexts(outlineTexts);
  const [side, setSide] = useState<'left' | 'right'>(first < 0 ? 'left' : 'right');
  const [typed, setTyped] = useState('');
  const deg = Number(typed);
  const isRead = typed.trim() !== '' && deg >= 0 && deg <= 180;
  const done = () => onDone(side === 'left' ? -deg : deg);
  return (
    <div className="draw-panel">
      <p className="soft">{say('angleHelp')}</p>
      <Choice
        label={say('otherAngle')}
        value={side}
        options={[
          ['left', say('turnLeft')],
          ['right', say('turnRight')],
        ]}
        onChange={setSide}
      />
      <div className="draw-row">
        {['30', '45', '60'].map((usual) => (
          <Button key={usual} onPress={() => setTyped(usual)}>
            {usual}°
          </Button>
        ))}
      </div>
      <Field
        label={say('turnAngle')}
        value={typed}
        onChange={setTyped}
        keyboard="decimal"
        {...(isRead ? { onDone: done } : {})}
      />
      <Button look="main" wide isDisabled={!isRead} onPress={done}>
        {say('goLength')}
      </Button>
    </div>
  );
}
