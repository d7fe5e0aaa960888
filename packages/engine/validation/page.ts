import type { ClimateYear } from '../src/climate/year.ts';
import type { Provenance } from '../src/sources/source.ts';
import { type CheckCount, checkLines } from './check-values.ts';
import { fixed, meanOfHours, SUMMER } from './figures.ts';
import { parameterLines } from './parameter-table.ts';
import { prototypeTable } from './prototype-table.ts';
import { type Evaluated, runStudy } from './run-studies.ts';
import { NOT_RUN, STUDIES } from './studies.ts';
import type { Finding } from './study.ts';
import { type WeatherFile, yearOf } from './weather.ts';

/** What a validation page is made from. */
interface PageInput {
  readonly engineVersion: string;
  /** Finds the weather file of a station; absent, hours are synthesized from the built-in monthly statistics. */
  readonly fileOf?: (station: string) => WeatherFile | undefined;
  readonly checks: readonly CheckCount[];
}

const KNOWN: Readonly<Record<Provenance, string>> = {
  read: 'read',
  quoted: 'seen in a quotation',
  memory: 'from memory',
  computed: 'computed',
  practice: 'common practice, no source',
};

/** Runs every study and writes the page, the same for the same input. */
export function validationPage({ engineVersion, fileOf, checks }: PageInput): string {
  const years = new Map<string, ClimateYear>();
  const weatherOf = (place: string) => {
    const year = years.get(place) ?? yearOf(place, fileOf ?? (() => undefined));
    years.set(place, year);
    return year;
  };
  const evaluated = STUDIES.map((study) => runStudy(study, weatherOf));
  const lines = [
    ...opening(engineVersion, evaluated),
    ...parameterLines(),
    ...weatherLines(years, fileOf !== undefined),
    '## The studies',
    '',
    ...evaluated.flatMap(studyLines),
    ...closingLines(checks),
  ];
  return `${lines.join('\n').trimEnd()}\n`;
}

function opening(engineVersion: string, evaluated: readonly Evaluated[]): string[] {
  const all = evaluated.flatMap(({ findings }) => findings);
  const [passed, missed, shown] = counts(all);
  return [
    '# Validation',
    '',
    `Engine ${engineVersion}. Written by \`npm run validate\` from \`packages/engine/validation\`; not edited by hand.`,
    '',
    'This page holds the year by the hour and the pressure network against published field studies of crawl spaces. One set',
    'of parameters, the documented defaults, serves all of them: nothing was adjusted to a study, and what misses stays on',
    'the page. None of the studies published monthly tables or its weather in a form that was at hand, so most gates are',
    'bands and directions, and all weather is that of another place. That is weak evidence: a pass says that the model does',
    'not contradict the study, not that it would have told its numbers beforehand.',
    '',
    'Levels: **A** numbers of the study were read, **B** a result in words was read, **C** numbers from memory, shown and',
    'never gated on.',
    '',
    `**${passed} gates pass, ${missed} miss; ${shown} more rows are shown without a gate.**`,
    '',
    '| | study | pass | miss | shown only |',
    '|---|---|--:|--:|--:|',
    ...evaluated.map(({ study, findings }) => {
      const [p, m, s] = counts(findings);
      return `| [${study.id}](#${study.id.toLowerCase()}) | ${study.study} | ${p} | ${m} | ${s} |`;
    }),
    '',
    'What misses:',
    '',
    ...evaluated.flatMap(({ study, findings }) =>
      findings
        .filter((one) => one.pass === false)
        .map(({ quantity, published, ours }) => `- ${study.id} ${quantity}: ${ours}; expected: ${published}`),
    ),
    '',
  ];
}

function counts(findings: readonly Finding[]): [passed: number, missed: number, shown: number] {
  const count = (pass: boolean | null) => findings.filter((one) => one.pass === pass).length;
  return [count(true), count(false), count(null)];
}

function weatherLines(years: ReadonlyMap<string, ClimateYear>, fromFiles: boolean): string[] {
  return [
    '## Weather',
    '',
    fromFiles
      ? 'Typical years from weather files of the shared reference data. No file is of the place of a study.'
      : 'No weather files were given (`UNDERCROFT_SHARED` is not set), so the hours were synthesized from the built-in monthly statistics: they are generated, not a record. No station is at the place of a study.',
    '',
    '| weather | studies | June to August, °C | g/kg | what it is |',
    '|---|---|--:|--:|---|',
    ...[...years].map(([id, year]) => {
      const used = STUDIES.filter(({ cases }) => cases.some(({ place }) => place === id)).map(
        (study) => study.id,
      );
      const warmth = fixed(meanOfHours(year.temperatureC, SUMMER), 1);
      const water = fixed(1000 * meanOfHours(year.humidityRatio, SUMMER), 1);
      return `| ${year.place.name} | ${used.join(', ')} | ${warmth} | ${water} | ${year.source} |`;
    }),
    '',
  ];
}

function studyLines({ study, findings, unsettled }: Evaluated): string[] {
  const misses = findings.filter((one) => one.pass === false);
  return [
    `### ${study.id}`,
    '',
    study.study,
    '',
    '**Published**',
    '',
    ...study.published.map(
      ({ level, says, source }) => `- ${level}: ${says} (${source.citation}; ${KNOWN[source.provenance]})`,
    ),
    '',
    '**The description gives**',
    '',
    ...study.given.map((line) => `- ${line}`),
    '',
    '**Assumed**',
    '',
    ...study.assumed.map((line) => `- ${line}`),
    '',
    '| | quantity | expected | ours | |',
    '|---|---|---|---|---|',
    ...findings.map(
      ({ level, quantity, published, ours, pass }) =>
        `| ${level} | ${quantity} | ${published} | ${ours} | ${pass === null ? 'shown' : pass ? 'pass' : '**miss**'} |`,
    ),
    '',
    ...(misses.length === 0 ? [] : ['**Why the misses**', '', ...reasons(misses), '']),
    ...(unsettled.length === 0
      ? []
      : [`Years that did not repeat within tolerance: ${unsettled.join('; ')}.`, '']),
  ];
}

/** Misses by their reason: those that share one stand together. */
function reasons(misses: readonly Finding[]): string[] {
  const byWhy = new Map<string, string[]>();
  for (const { quantity, why = 'Not explained.' } of misses) {
    byWhy.set(why, [...(byWhy.get(why) ?? []), quantity]);
  }
  return [...byWhy].map(([why, quantities]) => `- ${quantities.join('; ')}: ${why}`);
}

function closingLines(checks: readonly CheckCount[]): string[] {
  return [
    '## Known and not run',
    '',
    '| | study | why not |',
    '|---|---|---|',
    ...NOT_RUN.map(({ id, study, why }) => `| ${id} | ${study} | ${why} |`),
    '',
    '## Check values by subject',
    '',
    'The equations under the year are tested one by one against printed tables and worked examples. Where no printed value',
    'exists the test says that its numbers were computed separately. One check is one test; many hold a row of several values.',
    '',
    ...checkLines(checks),
    '',
    '## The stylized year of a prototype',
    '',
    'Not a measurement: another, rough program of the same state equations was run for a stylized climate of eastern North',
    'Carolina, and gave whole percent. All inputs stand in `packages/engine/test/season/prototype-year.ts`; only there, case',
    'values differ from the one parameter set above, because the prototype had its own. Monthly relative humidity, %:',
    '',
    ...prototypeTable(),
    '',
  ];
}
