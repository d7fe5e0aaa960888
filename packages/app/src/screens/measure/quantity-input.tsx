import type { criteria } from '@undercroft/engine';
import { Choice } from '../../parts/field.tsx';
import { FigurePad } from '../../parts/figure-pad.tsx';
import { NumberPad } from '../../parts/number-pad.tsx';
import { useSettings } from '../../settings/settings.ts';
import { useTexts } from '../../text/texts.ts';
import { quantityTitle } from './find-quantity.ts';
import { measureTexts } from './measure-texts.ts';
import { quantityText, readQuantity, readTyped, typedAs, typedUnit } from './quantity-unit.ts';

interface QuantityInputProps {
  readonly quantity: criteria.Quantity;
  /** As typed; `yes` or `no` where it is an answer. */
  readonly typed: string;
  readonly last?: string | undefined;
  readonly onType: (typed: string) => void;
  readonly onDone: () => void;
}

/** The pad for a quantity, in the unit of the trade, or yes and no. */
export function QuantityInput({ quantity, typed, last, onType, onDone }: QuantityInputProps) {
  const say = useTexts(measureTexts);
  const { units: system, language } = useSettings();
  const kind = typedAs(quantity);
  const label = quantityTitle(quantity.key, language);
  const [low, high] = quantity.range ?? [0, 0];
  const problem = readTyped(quantity, typed, system).isReal
    ? undefined
    : say('outsideRange', {
        low: quantityText(quantity, low, system),
        high: quantityText(quantity, high, system),
      });
  if (kind.as === 'answer') {
    return (
      <Choice
        label={label}
        value={typed}
        options={[
          ['yes', say('yes')],
          ['no', say('no')],
        ]}
        onChange={onType}
      />
    );
  }
  if (kind.as === 'tape') {
    return (
      <>
        <FigurePad
          label={label}
          typed={typed}
          onType={onType}
          onDone={onDone}
          last={last}
          bareUnit={system === 'us' ? 'in' : 'mm'}
          signed={kind.signed}
          embedded
        />
        {problem !== undefined && <p className="problem">{problem}</p>}
      </>
    );
  }
  return (
    <NumberPad
      slots={[
        {
          name: 'quantity',
          label,
          dimension: kind.dimension,
          typed,
          last,
          signed: kind.signed,
          symbol: typedUnit(kind, system),
          problem,
          read: (text) => readQuantity(text, kind, system),
        },
      ]}
      onType={(_, text) => onType(text)}
      onDone={onDone}
    />
  );
}
