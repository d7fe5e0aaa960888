import { units } from '@undercroft/engine';
import { useRef, useState } from 'react';
import { Button as Key } from 'react-aria-components/Button';
import { useSettings } from '../settings/settings.ts';
import { useTexts } from '../text/texts.ts';
import { Field } from './field.tsx';
import { padTexts } from './pad-texts.ts';
import { pressNumberKey, readNumber, unitSymbol } from './read-number.ts';
import './figure-pad.css';
import './number-pad.css';

/** One number of a form. */
export interface NumberSlot {
  readonly name: string;
  readonly label: string;
  readonly dimension: units.Dimension;
  readonly typed: string;
  /** The last one that was taken, as typed, for the key that repeats it. */
  readonly last?: string | undefined;
  /** Whether it may lie below zero. */
  readonly signed?: boolean;
  /** What is wrong with a number that was read. */
  readonly problem?: string | undefined;
  /** Unit of a number without one, and how it is read, where they are not those of the dimension. */
  readonly symbol?: string;
  readonly read?: (typed: string) => number | null;
}

interface NumberPadProps {
  readonly slots: readonly NumberSlot[];
  readonly onType: (name: string, typed: string) => void;
  /** Enter was pressed, or the last number is done. */
  readonly onDone: () => void;
}

const DIGITS = ['7', '8', '9', '4', '5', '6', '1', '2', '3', '.', '0'] as const;

/** A pad for one number or several side by side, each in the unit that is set. A keyboard works too. */
export function NumberPad({ slots, onType, onDone }: NumberPadProps) {
  const say = useTexts(padTexts);
  const { units: system } = useSettings();
  const [chosen, setChosen] = useState<string | null>(null);
  const at = Math.max(
    0,
    slots.findIndex((slot) => slot.name === chosen),
  );
  const active = slots[at];
  const next = slots[at + 1];
  const press = (key: string) => onType(active.name, pressNumberKey(active.typed, key));
  const pad = useRef<HTMLDivElement>(null);
  const goOn = () => {
    if (next === undefined) return onDone();
    setChosen(next.name);
    pad.current?.querySelectorAll('input')[at + 1]?.focus();
  };
  const { last } = active;
  return (
    <div className="pad" ref={pad}>
      <div className="number-slots">
        {slots.map((slot) => (
          <Slot
            key={slot.name}
            slot={slot}
            isActive={slot === active}
            onType={(typed) => onType(slot.name, typed)}
            onEnter={() => setChosen(slot.name)}
            onDone={goOn}
          />
        ))}
      </div>
      <div className="pad-keys">
        {DIGITS.map((key) => (
          <Key key={key} className="pad-key figure" onPress={() => press(key)}>
            {key}
          </Key>
        ))}
        <Key className="pad-key" aria-label={say('back')} onPress={() => press('back')}>
          ⌫
        </Key>
      </div>
      <div className="pad-row">
        {active.signed === true && (
          <Key className="pad-key" aria-label={say('sign')} onPress={() => press('±')}>
            ±
          </Key>
        )}
        <Key
          className="pad-key"
          isDisabled={last === undefined}
          onPress={() => last !== undefined && onType(active.name, last)}
        >
          {last === undefined
            ? say('repeat')
            : say('repeatThis', {
                last: `${last} ${active.symbol ?? unitSymbol(active.dimension, system)}`.trim(),
              })}
        </Key>
        {slots.length > 1 && (
          <Key className="pad-key" onPress={() => setChosen((next ?? slots[0]).name)}>
            {(next ?? slots[0]).label} →
          </Key>
        )}
      </div>
    </div>
  );
}

interface SlotProps {
  readonly slot: NumberSlot;
  readonly isActive: boolean;
  readonly onType: (typed: string) => void;
  readonly onEnter: () => void;
  readonly onDone: () => void;
}

function Slot({ slot, isActive, onType, onEnter, onDone }: SlotProps) {
  const say = useTexts(padTexts);
  const { units: system } = useSettings();
  const { label, dimension, typed, problem, read } = slot;
  const symbol = slot.symbol ?? unitSymbol(dimension, system);
  const value = read === undefined ? readNumber(typed, dimension, system) : read(typed);
  const other = system === 'us' ? 'si' : 'us';
  const isSaid = value !== null && read === undefined && unitSymbol(dimension, other) !== symbol;
  return (
    <div className={isActive ? 'number-slot is-active' : 'number-slot'}>
      <Field
        label={symbol === '' ? label : `${label}, ${symbol}`}
        value={typed}
        onChange={onType}
        onEnter={onEnter}
        onDone={onDone}
        keyboard="none"
        problem={problem ?? (value === null && typed !== '' ? say('notNumber') : undefined)}
        hint={<span className="figure">{isSaid ? units.formatQuantity(value, dimension, other) : ''}</span>}
      />
    </div>
  );
}
