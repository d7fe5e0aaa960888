import { units } from '@undercroft/engine';
import { Pick } from '../../parts/field.tsx';
import { NumberPad } from '../../parts/number-pad.tsx';
import { readNumber } from '../../parts/read-number.ts';
import { useSettings } from '../../settings/settings.ts';
import { useTexts } from '../../text/texts.ts';
import { isTemperature } from './air-form.tsx';
import { type KindFormProps, NOT_TAKEN } from './kind-form.ts';
import { MeaningLine, useMeaning } from './meaning.tsx';
import { measureTexts } from './measure-texts.ts';
import { ReadingForm } from './reading-form.tsx';

const SURFACES = [
  'wall',
  'ground',
  'liner',
  'pier',
  'joist',
  'girder',
  'sill',
  'rim',
  'subfloor',
  'duct',
  'pipe',
  'other',
] as const;

/** Temperature of a surface, and whether it is wet now. */
export function SurfaceForm({ props, job, draft }: KindFormProps) {
  const say = useTexts(measureTexts);
  const { units: system } = useSettings();
  const { typed, last, of, place } = draft.form;
  const temperatureC = readNumber(typed.surface ?? '', 'temperature', system);
  const isReal = isTemperature(temperatureC);
  const value = temperatureC === null || !isReal ? null : { of, temperatureC };
  const meaning = useMeaning(
    job,
    value === null ? null : { kind: 'surface', reading: { ...value, ...NOT_TAKEN, place } },
  );
  return (
    <ReadingForm
      props={props}
      draft={draft}
      kind="surface"
      value={value}
      shown={value === null ? '' : units.formatQuantity(value.temperatureC, 'temperature', system, 1)}
      summary={`${say('of')} ${say(of)}`}
      opened={job.readings.surface.length === 0}
      details={
        <Pick
          label={say('of')}
          value={of}
          options={SURFACES.map((one) => [one, say(one)] as const)}
          onChange={(chosen) => draft.change({ of: chosen })}
        />
      }
      meaning={<MeaningLine answer={meaning} />}
    >
      {(save) => (
        <NumberPad
          slots={[
            {
              name: 'surface',
              label: say('temperature'),
              dimension: 'temperature',
              typed: typed.surface ?? '',
              last: last.surface,
              signed: true,
              problem: isReal ? undefined : say('tooMuch'),
            },
          ]}
          onType={(name, text) => draft.change({ typed: { ...typed, [name]: text } })}
          onDone={save}
        />
      )}
    </ReadingForm>
  );
}
