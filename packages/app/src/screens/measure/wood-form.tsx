import { units, wood } from '@undercroft/engine';
import type { Job } from '@undercroft/record';
import { Choice, Pick } from '../../parts/field.tsx';
import { NumberPad } from '../../parts/number-pad.tsx';
import { readNumber } from '../../parts/read-number.ts';
import { wallsOf } from '../../plan/walls.ts';
import { useSettings } from '../../settings/settings.ts';
import { useTexts } from '../../text/texts.ts';
import { isTemperature } from './air-form.tsx';
import { type KindFormProps, NOT_TAKEN } from './kind-form.ts';
import { nextPlace, type Step, stepOf, wayOf } from './line-of-joists.ts';
import { MeaningLine, useMeaning } from './meaning.tsx';
import type { MeasureForm, Way } from './measure-form.ts';
import { measureTexts } from './measure-texts.ts';
import { ReadingForm } from './reading-form.tsx';

const MEMBERS = ['joist', 'girder', 'sill', 'rim', 'subfloor', 'post', 'other'] as const;

/** Species that a person may know; those without figures are left uncorrected, and the line says so. */
const SPECIES = [...wood.meterSpecies, 'spruce-pine-fir'] as readonly (
  | 'douglas-fir'
  | 'southern-pine'
  | 'longleaf-pine'
  | 'shortleaf-pine'
  | 'sitka-spruce'
  | 'red-oak'
  | 'white-oak'
  | 'spruce-pine-fir'
)[];

/** The most that a pin meter shows [fraction]: soaked wood may be over 1. */
const MOST_SHOWN = 3;

/** A pin reading, corrected as one types, and the way to the next joist. */
export function WoodForm({ props, job, draft }: KindFormProps) {
  const say = useTexts(measureTexts);
  const { units: system } = useSettings();
  const { form, change } = draft;
  const { typed, last, member, species, meterScale, meterCorrects } = form;
  const shown = readNumber(typed.wood ?? '', 'moistureContent', system);
  const woodC = readNumber(typed.woodTemperature ?? '', 'temperature', system);
  const isShown = shown === null || (shown >= 0 && shown <= MOST_SHOWN);
  const isReal = isTemperature(woodC);
  const value =
    shown === null || !isShown || !isReal
      ? null
      : {
          member,
          shown,
          meterScale,
          meterCorrects,
          ...(species === '' ? {} : { species }),
          ...(woodC === null ? {} : { woodTemperatureC: woodC }),
        };
  const meaning = useMeaning(
    job,
    value === null
      ? null
      : { kind: 'wood', reading: { calibrationC: 21.1, ...value, ...NOT_TAKEN, place: {} } },
  );
  const kindOf = (key: string) => SPECIES.find((one) => one === key);
  const speciesWord = kindOf(species);
  return (
    <ReadingForm
      props={props}
      draft={draft}
      kind="wood"
      value={value}
      shown={value === null ? '' : units.formatQuantity(value.shown, 'moistureContent', system)}
      summary={[say(member), speciesWord === undefined ? say('speciesUnknown') : say(speciesWord)].join(', ')}
      opened={job.readings.wood.length === 0}
      details={
        <>
          <Pick
            label={say('member')}
            value={member}
            options={MEMBERS.map((one) => [one, say(one)] as const)}
            onChange={(chosen) => change({ member: chosen })}
          />
          <Pick
            label={say('species')}
            value={species}
            options={[['', say('speciesUnknown')], ...SPECIES.map((one) => [one, say(one)] as const)]}
            onChange={(chosen) => change({ species: chosen })}
          />
          <Pick
            label={say('meterScale')}
            value={meterScale}
            options={SPECIES.slice(0, -1).map((one) => [one as string, say(one)] as const)}
            onChange={(chosen) => change({ meterScale: chosen })}
          />
          <Pick
            label={say('meterCorrects')}
            value={meterCorrects}
            options={[
              ['nothing', say('correctsNothing')],
              ['temperature', say('correctsTemperature')],
              ['temperature-and-species', say('correctsBoth')],
            ]}
            onChange={(chosen) => change({ meterCorrects: chosen })}
          />
        </>
      }
      meaning={<MeaningLine answer={meaning} />}
      next={() => ({
        // The wood keeps its temperature from joist to joist until somebody measures another.
        typed: typed.woodTemperature === undefined ? {} : { woodTemperature: typed.woodTemperature },
        ...onward(job, form),
      })}
    >
      {(save) => (
        <>
          <NumberPad
            slots={[
              {
                name: 'wood',
                label: say('shown'),
                dimension: 'moistureContent',
                typed: typed.wood ?? '',
                last: last.wood,
                problem: isShown ? undefined : say('tooMuch'),
              },
              {
                name: 'woodTemperature',
                label: say('woodTemperature'),
                dimension: 'temperature',
                typed: typed.woodTemperature ?? '',
                last: last.woodTemperature,
                signed: true,
                problem: isReal ? undefined : say('tooMuch'),
              },
            ]}
            onType={(name, text) => change({ typed: { ...typed, [name]: text } })}
            onDone={save}
          />
          <Onward job={job} form={form} onChange={(way) => change({ way })} />
        </>
      )}
    </ReadingForm>
  );
}

/** Places of the readings that were saved in a row. */
function rowOf(job: Job, saved: readonly string[]) {
  return saved.flatMap((id) => job.readings.wood.find((reading) => reading.id === id)?.place.at ?? []);
}

/** The step to the next joist with the place that is about to be saved in the row. */
function stepFrom(job: Job, form: MeasureForm): Step | null {
  const { at } = form.place;
  return stepOf(job, [...rowOf(job, form.saved), ...(at === undefined ? [] : [at])]);
}

/** Where the next reading is taken. */
function onward(job: Job, form: MeasureForm): Partial<MeasureForm> {
  if (form.way === 'stay') return {};
  const next = nextPlace(form.place, stepFrom(job, form), form.way === 'forward' ? 1 : -1, wallsOf(job));
  // At a wall the place is open again: a wrong one would be worse than none.
  return next === null ? { place: {}, way: 'stay' } : { place: next };
}

interface OnwardProps {
  readonly job: Job;
  readonly form: MeasureForm;
  readonly onChange: (way: Way) => void;
}

const WORDS = { right: 'nextRight', left: 'nextLeft', up: 'nextUp', down: 'nextDown' } as const;

/** Where to go after saving: the next joist either way, or nowhere. */
function Onward({ job, form, onChange }: OnwardProps) {
  const say = useTexts(measureTexts);
  const step = stepFrom(job, form);
  const isDrawn = job.plan.joists.length > 0;
  if (form.member !== 'joist') return null;
  if (step === null) return <p className="soft">{say('noStep')}</p>;
  return (
    <Choice
      label={say('after')}
      value={form.way}
      options={[
        ['stay', say('stay')],
        ['forward', say(WORDS[wayOf(step, 1)])],
        ...(isDrawn ? ([['back', say(WORDS[wayOf(step, -1)])]] as const) : []),
      ]}
      onChange={onChange}
    />
  );
}
