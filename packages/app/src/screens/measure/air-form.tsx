import { units } from '@undercroft/engine';
import { Choice } from '../../parts/field.tsx';
import { NumberPad } from '../../parts/number-pad.tsx';
import { readNumber } from '../../parts/read-number.ts';
import { useSettings } from '../../settings/settings.ts';
import { useTexts } from '../../text/texts.ts';
import { type KindFormProps, NOT_TAKEN } from './kind-form.ts';
import { MeaningLine, useMeaning } from './meaning.tsx';
import { measureTexts } from './measure-texts.ts';
import { ReadingForm } from './reading-form.tsx';

/** Temperatures that the record takes [°C]. */
export const isTemperature = (celsius: number | null) =>
  celsius === null || (celsius >= -60 && celsius <= 80);

/** Air: temperature and humidity, with its dew point as one types. */
export function AirForm({ props, job, draft }: KindFormProps) {
  const say = useTexts(measureTexts);
  const { units: system } = useSettings();
  const { form, change } = draft;
  const { typed, last, where } = form;
  const temperatureC = readNumber(typed.airTemperature ?? '', 'temperature', system);
  const relativeHumidity = readNumber(typed.airHumidity ?? '', 'relativeHumidity', system);
  const isHumid = relativeHumidity === null || (relativeHumidity >= 0 && relativeHumidity <= 1);
  const isReal = isTemperature(temperatureC);
  const value =
    temperatureC === null || relativeHumidity === null || !isHumid || !isReal
      ? null
      : { where, temperatureC, relativeHumidity };
  const meaning = useMeaning(
    job,
    value === null ? null : { kind: 'air', reading: { ...value, ...NOT_TAKEN, place: {} } },
  );
  const shown = (v: NonNullable<typeof value>) =>
    `${units.formatQuantity(v.temperatureC, 'temperature', system)}, ${units.formatQuantity(v.relativeHumidity, 'relativeHumidity', system)}`;
  return (
    <ReadingForm
      props={props}
      draft={draft}
      kind="air"
      value={value}
      shown={value === null ? '' : shown(value)}
      summary={`${say('where')} ${say(where)}`}
      opened={job.readings.air.length === 0}
      details={
        <Choice
          label={say('where')}
          value={where}
          options={[
            ['crawl', say('crawl')],
            ['outdoor', say('outdoor')],
            ['house', say('house')],
          ]}
          onChange={(chosen) => change({ where: chosen })}
        />
      }
      meaning={<MeaningLine answer={meaning} isCrawl={where === 'crawl'} />}
    >
      {(save) => (
        <NumberPad
          slots={[
            {
              name: 'airTemperature',
              label: say('temperature'),
              dimension: 'temperature',
              typed: typed.airTemperature ?? '',
              last: last.airTemperature,
              signed: true,
              problem: isReal ? undefined : say('tooMuch'),
            },
            {
              name: 'airHumidity',
              label: say('humidity'),
              dimension: 'relativeHumidity',
              typed: typed.airHumidity ?? '',
              last: last.airHumidity,
              problem: isHumid ? undefined : say('tooHumid'),
            },
          ]}
          onType={(name, text) => change({ typed: { ...typed, [name]: text } })}
          onDone={save}
        />
      )}
    </ReadingForm>
  );
}
