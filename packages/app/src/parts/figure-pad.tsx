import { units } from '@undercroft/engine';
import { useState } from 'react';
import { Button as Key } from 'react-aria-components/Button';
import { useSettings } from '../settings/settings.ts';
import { commonTexts } from '../text/common.ts';
import { useTexts } from '../text/texts.ts';
import { Button } from './button.tsx';
import { Field } from './field.tsx';
import { FRACTIONS, METRIC_UNITS, pressKey } from './pad-keys.ts';
import { padTexts } from './pad-texts.ts';
import './figure-pad.css';
import './number-pad.css';

interface FigurePadProps {
  readonly label: string;
  /** What was typed so far. */
  readonly typed: string;
  readonly onType: (typed: string) => void;
  /** Gets the length exactly [nm] and the text as typed. */
  readonly onDone: (length: { readonly nm: number; readonly typed: string }) => void;
  /** The last length that was taken, as typed, for the key that repeats it. */
  readonly last?: string | undefined;
  /** Says in which unit a number without one is; without it such a number is asked about. */
  readonly bareUnit?: 'ft' | 'in' | 'm' | 'cm' | 'mm';
  /** True where it may lie below zero: a minus stands before the length. */
  readonly signed?: boolean;
  /** True within a form that has a button of its own. */
  readonly embedded?: boolean;
}

/**
 * The pad for lengths: three columns of keys for a gloved thumb, with feet, inches and fractions of a tape, or metric
 * units. What is typed is read back at once; what could mean two things is asked about. A keyboard and pasting work too.
 */
export function FigurePad(props: FigurePadProps) {
  const { label, typed, onType, onDone, last, bareUnit, signed = false, embedded = false } = props;
  const say = useTexts(padTexts);
  const common = useTexts(commonTexts);
  const { units: system, language } = useSettings();
  const [fractions, setFractions] = useState(false);
  const isMinus = signed && typed.startsWith('-');
  const size = isMinus ? typed.slice(1) : typed;
  const read = units.parseLength(size, bareUnit);
  const done = () => {
    if (read.ok) onDone({ nm: isMinus ? -read.nanometers : read.nanometers, typed });
  };
  const press = (key: string) => {
    onType(`${isMinus ? '-' : ''}${pressKey(size, key)}`);
    setFractions(false);
  };
  const us = system === 'us';
  const digits = ['7', '8', '9', '4', '5', '6', '1', '2', '3'];
  const keys: readonly string[] =
    us && fractions ? FRACTIONS : us ? [...digits, 'ft', '0', 'in'] : [...digits, '.', '0', ...METRIC_UNITS];
  const problem = language === 'en' && !read.ok ? `${read.problem}. ${read.hint}` : say('notRead');
  return (
    <div className="pad">
      <div className="pad-head">
        <Field label={label} value={typed} onChange={onType} onDone={done} keyboard="none" />
        {last !== undefined && (
          <Key className="pad-key" onPress={() => onType(last)}>
            {say('repeatThis', { last })}
          </Key>
        )}
      </div>
      <output className="pad-reading figure">
        {read.ok ? `${isMinus ? '−' : ''}${read.reading}` : typed === '' ? say('typeOne') : problem}
      </output>
      <div className="pad-keys">
        {keys.map((key) => (
          <Key key={key} className="pad-key figure" onPress={() => press(key)}>
            {key}
          </Key>
        ))}
        {us && (
          <Key
            className="pad-key"
            aria-label={fractions ? `1 2 3: ${say('digits')}` : `½ ¼ ⅛: ${say('fractions')}`}
            onPress={() => setFractions(!fractions)}
          >
            {fractions ? '1 2 3' : '½ ¼ ⅛'}
          </Key>
        )}
        <Key className="pad-key" aria-label={say('back')} onPress={() => press('back')}>
          ⌫
        </Key>
        {!embedded && (
          <Button look="main" isDisabled={!read.ok} onPress={done}>
            {common('done')}
          </Button>
        )}
      </div>
      {signed && (
        <div className="pad-row">
          <Key
            className="pad-key"
            aria-label={say('sign')}
            onPress={() => onType(isMinus ? size : `-${size}`)}
          >
            ±
          </Key>
        </div>
      )}
    </div>
  );
}
