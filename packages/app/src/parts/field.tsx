import { type ReactNode, useId } from 'react';
import './field.css';

interface FieldProps {
  readonly label: string;
  readonly value: string;
  readonly onChange: (value: string) => void;
  /** Enter was pressed. */
  readonly onDone?: () => void;
  readonly onLeave?: () => void;
  readonly onEnter?: () => void;
  readonly type?: 'text' | 'search';
  readonly hint?: ReactNode;
  readonly problem?: string | undefined;
  /** Keyboard of a phone: `none` where the figure pad stands in for it. */
  readonly keyboard?: 'text' | 'decimal' | 'none';
}

/** One line of text with its label above, where a thumb does not hide it. */
export function Field(props: FieldProps) {
  const {
    label,
    value,
    onChange,
    onDone,
    onLeave,
    onEnter,
    type = 'text',
    hint,
    problem,
    keyboard = 'text',
  } = props;
  const id = useId();
  const notes = problem ?? hint;
  return (
    <div className="field">
      <label htmlFor={id}>{label}</label>
      <input
        id={id}
        type={type}
        value={value}
        inputMode={keyboard}
        autoComplete="off"
        aria-invalid={problem !== undefined}
        {...(notes === undefined ? {} : { 'aria-describedby': `${id}-notes` })}
        onChange={(event) => onChange(event.target.value)}
        onBlur={onLeave}
        onFocus={onEnter}
        onKeyDown={(event) => {
          if (event.key === 'Enter' && onDone !== undefined) {
            event.preventDefault();
            onDone();
          }
        }}
      />
      {notes !== undefined && (
        <p id={`${id}-notes`} className={problem === undefined ? 'soft' : 'problem'}>
          {notes}
        </p>
      )}
    </div>
  );
}

interface ChoiceProps<T extends string> {
  readonly label: string;
  readonly value: T;
  readonly options: readonly (readonly [value: T, label: string])[];
  readonly onChange: (value: T) => void;
}

/** One of a few, all of them in sight. */
export function Choice<T extends string>({ label, value, options, onChange }: ChoiceProps<T>) {
  const name = useId();
  return (
    <fieldset className="choice">
      <legend>{label}</legend>
      <div>
        {options.map(([option, text]) => (
          <label key={option}>
            <input type="radio" name={name} checked={option === value} onChange={() => onChange(option)} />
            <span>{text}</span>
          </label>
        ))}
      </div>
    </fieldset>
  );
}

/** One of a few in little room: the list opens when it is asked for. */
export function Pick<T extends string>({ label, value, options, onChange }: ChoiceProps<T>) {
  const id = useId();
  return (
    <div className="field">
      <label htmlFor={id}>{label}</label>
      <select id={id} value={value} onChange={(event) => onChange(event.target.value as T)}>
        {options.map(([option, text]) => (
          <option key={option} value={option}>
            {text}
          </option>
        ))}
      </select>
    </div>
  );
}
