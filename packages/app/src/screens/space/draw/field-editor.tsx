import { units } from '@undercroft/engine';
import { useState } from 'react';
import type { CommitResult } from '../../../jobs/open-job.ts';
import { Button } from '../../../parts/button.tsx';
import { Choice, Field } from '../../../parts/field.tsx';
import { FigurePad } from '../../../parts/figure-pad.tsx';
import { useSettings } from '../../../settings/settings.ts';
import { commonTexts } from '../../../text/common.ts';
import { useTexts } from '../../../text/texts.ts';
import { drawTexts } from './draw-texts.ts';
import { kindTexts, optionTexts } from './kind-texts.ts';
import type { FieldSpec } from './kinds.ts';
import { lastLength, rememberLength } from './last-length.ts';
import { InvertsEditor, OpeningsEditor } from './list-editors.tsx';
import { numberOf, unitOf } from './shown.ts';

interface FieldEditorProps<F extends FieldSpec = FieldSpec> {
  readonly field: F;
  readonly value: unknown;
  /** Keeps a value, or with undefined says that nobody knows it. */
  readonly onSet: (to: unknown) => Promise<CommitResult>;
  readonly onDone: () => void;
}

/** Changes one fact. What breaks the record is not taken, and said so. */
export function FieldEditor({ field, value, onSet, onDone }: FieldEditorProps) {
  const say = useTexts(drawTexts);
  const [problem, setProblem] = useState<string | undefined>();
  const set = async (to: unknown): Promise<CommitResult> => {
    const result = await onSet(to);
    setProblem('issues' in result ? say('notTaken', { expected: result.issues[0].expected }) : undefined);
    return result;
  };
  const take = async (to: unknown) => {
    const result = await set(to);
    if (!('issues' in result)) onDone();
  };
  const props = { field, value, onSet: set, onDone, take };
  return (
    <div className="draw-panel">
      {problem !== undefined && (
        <p className="problem" role="alert">
          {problem}
        </p>
      )}
      <EditorOf {...props} />
      {field.required !== true && !LISTS.has(field.is) && value !== undefined && (
        <Button look="quiet" onPress={() => void take(undefined)}>
          {say('clear')}
        </Button>
      )}
    </div>
  );
}

/** Facts that are lists: they are kept item by item. */
const LISTS: ReadonlySet<FieldSpec['is']> = new Set(['openings', 'inverts']);

type Props<K extends FieldSpec['is']> = Omit<FieldEditorProps, 'field'> & {
  readonly field: Extract<FieldSpec, { readonly is: K }>;
  readonly take: (to: unknown) => Promise<void>;
};

function EditorOf(
  props: Omit<FieldEditorProps, 'field'> & Pick<Props<'length'>, 'take'> & { field: FieldSpec },
) {
  const { field, ...rest } = props;
  switch (field.is) {
    case 'length':
      return <LengthEditor {...rest} field={field} />;
    case 'quantity':
      return <QuantityEditor {...rest} field={field} />;
    case 'choice':
      return <ChoiceEditor {...rest} field={field} />;
    case 'yes-no':
      return <YesNoEditor {...rest} field={field} />;
    case 'bearing':
    case 'turn':
      return <DegreesEditor {...rest} field={field} />;
    case 'words':
      return <WordsEditor {...rest} field={field} />;
    case 'openings':
      return <OpeningsEditor value={rest.value} onSet={rest.onSet} />;
    case 'inverts':
      return <InvertsEditor value={rest.value} onSet={rest.onSet} />;
  }
}

function LengthEditor({ field, value, take }: Props<'length'>) {
  const kinds = useTexts(kindTexts);
  const [typed, setTyped] = useState('');
  const [below, setBelow] = useState(typeof value === 'number' && value < 0);
  return (
    <>
      {field.signed !== undefined && (
        <Choice
          label={kinds(field.name)}
          value={below ? 'below' : 'above'}
          options={[
            ['above', kinds(field.signed[0])],
            ['below', kinds(field.signed[1])],
          ]}
          onChange={(side) => setBelow(side === 'below')}
        />
      )}
      <FigurePad
        label={kinds(field.name)}
        typed={typed}
        onType={setTyped}
        last={lastLength(field.name)}
        onDone={({ nm, typed: text }) => {
          rememberLength(field.name, text);
          const meters = units.metersFromNanometers(nm);
          void take(below && meters > 0 ? -meters : meters);
        }}
      />
    </>
  );
}

function QuantityEditor({ field, value, take }: Props<'quantity'>) {
  const say = useTexts(drawTexts);
  const kinds = useTexts(kindTexts);
  const common = useTexts(commonTexts);
  const { units: system } = useSettings();
  const unit = unitOf(field, system);
  const [typed, setTyped] = useState(typeof value === 'number' ? numberOf(field, value, system) : '');
  const [wrong, setWrong] = useState(false);
  const done = () => {
    const bare = /^[\d.,\s/+-]*$/.test(typed);
    const read = units.parseQuantity(bare ? `${typed} ${unit.name}` : typed, field.dimension);
    setWrong(!read.ok);
    if (read.ok) void take(read.value);
  };
  return (
    <>
      <Field
        label={`${kinds(field.name)}, ${unit.symbol}`}
        value={typed}
        onChange={setTyped}
        onDone={done}
        keyboard="decimal"
        problem={wrong ? say('notNumber', { example: `12 ${unit.symbol}` }) : undefined}
      />
      <Button look="main" wide isDisabled={typed.trim() === ''} onPress={done}>
        {common('done')}
      </Button>
    </>
  );
}

function ChoiceEditor({ field, value, take }: Props<'choice'>) {
  const options = useTexts(optionTexts);
  const kinds = useTexts(kindTexts);
  return (
    <fieldset className="draw-choice">
      <legend>{kinds(field.name)}</legend>
      {field.options.map((option) => (
        <Button
          key={option}
          wide
          look={option === value ? 'main' : 'plain'}
          onPress={() => void take(option)}
        >
          {options(option as keyof (typeof optionTexts)['en'])}
        </Button>
      ))}
    </fieldset>
  );
}

function YesNoEditor({ field, value, take }: Props<'yes-no'>) {
  const options = useTexts(optionTexts);
  const kinds = useTexts(kindTexts);
  return (
    <fieldset className="draw-choice">
      <legend>{kinds(field.name)}</legend>
      {([true, false] as const).map((answer) => (
        <Button
          key={String(answer)}
          wide
          look={answer === value ? 'main' : 'plain'}
          onPress={() => void take(answer)}
        >
          {options(answer ? 'yes' : 'no')}
        </Button>
      ))}
    </fieldset>
  );
}

const SIDES = [
  [0, '↑', 'towardTop'],
  [90, '→', 'towardRight'],
  [180, '↓', 'towardBottom'],
  [270, '←', 'towardLeft'],
] as const;

const TURNS = [0, 15, 30, 45] as const;

function DegreesEditor({ field, value, take }: Props<'bearing' | 'turn'>) {
  const say = useTexts(drawTexts);
  const kinds = useTexts(kindTexts);
  const common = useTexts(commonTexts);
  const [typed, setTyped] = useState(typeof value === 'number' ? String(value) : '');
  const number = Number(typed);
  const isRead = typed.trim() !== '' && Number.isFinite(number);
  const deg = field.is === 'turn' ? number : ((number % 360) + 360) % 360;
  return (
    <>
      <fieldset className="draw-choice sides">
        <legend>{kinds(field.name)}</legend>
        {field.is === 'turn'
          ? TURNS.map((turn) => (
              <Button key={turn} look={turn === value ? 'main' : 'plain'} onPress={() => void take(turn)}>
                {`${turn}°`}
              </Button>
            ))
          : SIDES.map(([side, arrow, name]) => (
              <Button
                key={side}
                label={say(name)}
                look={side === value ? 'main' : 'plain'}
                onPress={() => void take(side)}
              >
                {arrow}
              </Button>
            ))}
      </fieldset>
      {field.is === 'bearing' && field.name !== 'north' && <p>{say('tapDirection')}</p>}
      <Field
        label={say(field.is === 'turn' ? 'turnDegrees' : 'degrees')}
        value={typed}
        onChange={setTyped}
        keyboard="decimal"
        {...(isRead ? { onDone: () => void take(deg) } : {})}
      />
      <Button look="main" wide isDisabled={!isRead} onPress={() => void take(deg)}>
        {common('done')}
      </Button>
    </>
  );
}

function WordsEditor({ field, value, take }: Props<'words'>) {
  const kinds = useTexts(kindTexts);
  const common = useTexts(commonTexts);
  const [typed, setTyped] = useState(typeof value === 'string' ? value : '');
  const text = typed.trim();
  const done = () => void take(text === '' ? undefined : text);
  const mayBe = text !== '' || field.required !== true;
  return (
    <>
      <Field
        label={kinds(field.name)}
        value={typed}
        onChange={setTyped}
        {...(mayBe ? { onDone: done } : {})}
      />
      <Button look="main" wide isDisabled={!mayBe} onPress={done}>
        {common('done')}
      </Button>
    </>
  );
}
