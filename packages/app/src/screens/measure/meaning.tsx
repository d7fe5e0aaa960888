import type { DraftReading, ReadingMeaning } from '@undercroft/assessment';
import { units } from '@undercroft/engine';
import type { Job } from '@undercroft/record';
import { type ReactNode, useEffect, useState } from 'react';
import { type Settings, useSettings } from '../../settings/settings.ts';
import { type Say, sayIn, useTexts } from '../../text/texts.ts';
import type { DraftMeaning } from '../../worker/api.ts';
import { computer } from '../../worker/computer.ts';
import { latestWins } from '../../worker/latest-wins.ts';
import { measureTexts } from './measure-texts.ts';

type SayMeasure = Say<(typeof measureTexts)['en']>;

/** What a reading says while it is typed; the last answer stays until the next is there. */
export function useMeaning(job: Job, draft: DraftReading | null): DraftMeaning | null {
  const [ask] = useState(() =>
    latestWins(([asked, reading]: readonly [Job, DraftReading]) => computer().meaningOf(asked, reading)),
  );
  const [answer, setAnswer] = useState<DraftMeaning | null>(null);
  const key = draft === null ? '' : JSON.stringify(draft);
  // biome-ignore lint/correctness/useExhaustiveDependencies: the key stands for the draft
  useEffect(() => {
    if (draft === null) return setAnswer(null);
    let wanted = true;
    ask([job, draft]).then(
      (given) => wanted && setAnswer(given),
      () => undefined,
    );
    return () => {
      wanted = false;
    };
  }, [ask, job, key]);
  return draft === null ? null : answer;
}

const BANDS = {
  dry: 'bandDry',
  'mold-possible': 'bandMold',
  elevated: 'bandElevated',
  'above-dry-lumber': 'bandLumber',
  excessive: 'bandExcessive',
  'decay-prone': 'bandDecay',
  'above-fiber-saturation': 'bandSaturated',
} as const;

const NOTICES = {
  'uncorrected-for-temperature': 'noTemperature',
  'uncorrected-for-species': 'noSpecies',
  'above-meter-range': 'aboveRange',
  'outside-range': 'roughTemperature',
} as const;

interface Told {
  readonly head: string;
  readonly rest: readonly string[];
  /** What was not corrected, or how sure it is. */
  readonly fine?: readonly string[];
}

type Shown = (value: number, dimension: units.Dimension, digits?: number) => string;

function airTold(meaning: ReadingMeaning, say: SayMeasure, shown: Shown, isCrawl: boolean): Told {
  const { dewPointC, humidityInSpace } = meaning.figures;
  const head = say('dewPoint', { value: shown(dewPointC, 'temperature') });
  if (isCrawl) {
    const state = { fine: 'airFine', watch: 'airWatch', alarm: 'airAlarm' } as const;
    return { head, rest: [say(state[meaning.state])] };
  }
  if (humidityInSpace === undefined) return { head, rest: [say('outdoorPlain')] };
  return {
    head,
    rest: [
      humidityInSpace >= 1
        ? say('outdoorWet')
        : say('outdoorIn', { value: shown(humidityInSpace, 'relativeHumidity') }),
    ],
  };
}

function surfaceTold(meaning: ReadingMeaning, say: SayMeasure, shown: Shown): Told {
  const { dewPointC, surfaceRelativeHumidity } = meaning.figures;
  if (dewPointC === undefined) return { head: say('noAir'), rest: [say('noAirWhy')] };
  const dew = shown(dewPointC, 'temperature');
  if (meaning.state === 'alarm') return { head: say('wetNow'), rest: [say('wetNowWhy', { dew })] };
  const why = say('notWetWhy', { dew, rh: shown(surfaceRelativeHumidity, 'relativeHumidity') });
  return { head: say(meaning.state === 'watch' ? 'moldNear' : 'notWet'), rest: [why] };
}

function woodTold(meaning: ReadingMeaning, band: string | undefined, say: SayMeasure, shown: Shown): Told {
  const { moistureContent, low, high, temperatureChange, speciesChange } = meaning.figures;
  const value = shown(moistureContent, 'moistureContent');
  const change = (by: number) => `${by < 0 ? '−' : '+'}${shown(Math.abs(by), 'moistureContent')}`;
  const steps = [
    ...(temperatureChange === undefined ? [] : [say('byTemperature', { change: change(temperatureChange) })]),
    ...(speciesChange === undefined ? [] : [say('bySpecies', { change: change(speciesChange) })]),
  ];
  const head = { alarm: 'woodTooWet', watch: 'woodWatch', fine: 'woodFine' } as const;
  const notices = meaning.notices.flatMap(({ code }) =>
    code in NOTICES ? [say(NOTICES[code as keyof typeof NOTICES])] : [],
  );
  return {
    head: say(head[meaning.state], { value }),
    rest: [
      ...(band !== undefined && band in BANDS ? [say(BANDS[band as keyof typeof BANDS])] : []),
      ...(steps.length === 0
        ? []
        : [
            say('woodSteps', {
              shown: shown(
                moistureContent - (temperatureChange ?? 0) - (speciesChange ?? 0),
                'moistureContent',
              ),
              steps: steps.join(', '),
              value,
              low: shown(low, 'moistureContent', 0),
              high: shown(high, 'moistureContent', 0),
            }),
          ]),
    ],
    fine: notices,
  };
}

/** What a reading says in the language and units that are set. */
export function toldOf(
  { meaning, band }: Extract<DraftMeaning, { ok: true }>,
  isCrawl: boolean,
  { language, units: system }: Pick<Settings, 'language' | 'units'>,
): Told {
  const say = sayIn(language, measureTexts);
  const shown: Shown = (value, dimension, digits) => units.formatQuantity(value, dimension, system, digits);
  if (meaning.kind === 'air') return airTold(meaning, say, shown, isCrawl);
  if (meaning.kind === 'surface') return surfaceTold(meaning, say, shown);
  return woodTold(meaning, band, say, shown);
}

/** What a reading says, large, as it is typed. */
export function MeaningLine({ answer, isCrawl = true }: { answer: DraftMeaning | null; isCrawl?: boolean }) {
  const say = useTexts(measureTexts);
  const settings = useSettings();
  if (answer === null) return <MeaningBox>{say('typeOn')}</MeaningBox>;
  if (!answer.ok) return <MeaningBox>{answer.reason}</MeaningBox>;
  const { head, rest, fine = [] } = toldOf(answer, isCrawl, settings);
  return (
    <MeaningBox state={answer.meaning.state} head={head}>
      {rest.join(' ')} {fine.length > 0 && <small>{fine.join(' ')}</small>}
    </MeaningBox>
  );
}

interface MeaningBoxProps {
  readonly state?: ReadingMeaning['state'];
  readonly head?: string;
  readonly children?: ReactNode;
}

/** A large line with the mark of its state, and a smaller one. Read out when it has settled. */
export function MeaningBox({ state, head, children }: MeaningBoxProps) {
  return (
    <output className={`meaning ${state ?? 'waiting'}`} aria-live="polite">
      {head !== undefined && <strong>{head}</strong>}
      <span className={head === undefined ? 'soft' : ''}>{children}</span>
    </output>
  );
}
