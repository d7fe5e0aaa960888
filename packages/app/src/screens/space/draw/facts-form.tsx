import type { CommitResult } from '../../../jobs/open-job.ts';
import { Button } from '../../../parts/button.tsx';
import { useTexts } from '../../../text/texts.ts';
import { factOf } from './actions.ts';
import { drawTexts } from './draw-texts.ts';
import { FieldEditor } from './field-editor.tsx';
import { kindTexts } from './kind-texts.ts';
import type { FieldSpec } from './kinds.ts';
import { useShown } from './shown.ts';
import './draw.css';

interface FactsFormProps {
  readonly value: Readonly<Record<string, unknown>>;
  readonly fields: readonly FieldSpec[];
  /** The fact that is being changed, by its path. */
  readonly open: string | undefined;
  readonly onOpen: (at: string | undefined) => void;
  readonly onSet: (at: string, to: unknown) => Promise<CommitResult>;
}

/** The facts of something, one a line; a line that is tapped is changed with the whole sheet. */
export function FactsForm({ value, fields, open, onOpen, onSet }: FactsFormProps) {
  const say = useTexts(drawTexts);
  const kinds = useTexts(kindTexts);
  const shown = useShown();
  const asked = fields.filter((field) => field.when?.(value) ?? true);
  const field = asked.find(({ at }) => at === open);
  if (field !== undefined) {
    return (
      <FieldEditor
        key={field.at}
        field={field}
        value={factOf(value, field.at)}
        onSet={(to) => onSet(field.at, to)}
        onDone={() => onOpen(undefined)}
      />
    );
  }
  return (
    <ul className="facts">
      {asked.map((one) => {
        const text = shown(one, factOf(value, one.at));
        return (
          <li key={one.at}>
            <Button wide onPress={() => onOpen(one.at)}>
              <span>{kinds(one.name)}</span>
              <span className={text === null ? 'soft' : 'figure'}>{text ?? say('notKnown')}</span>
            </Button>
          </li>
        );
      })}
    </ul>
  );
}
