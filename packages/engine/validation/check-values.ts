/** Tests of one topic against values from outside, as counted when they ran. */
export interface CheckCount {
  /** Test file from the root of the repository. */
  readonly file: string;
  /** Title of the group of tests. */
  readonly topic: string;
  readonly passed: number;
  readonly total: number;
}

/** Subjects of the equations behind the year, with the test files that hold check values for them. */
export const CHECKED: readonly { subject: string; files: readonly string[] }[] = [
  {
    subject: 'Moisture sources: ground, liner, walls, cold surfaces',
    files: ['moisture/ground-evaporation', 'moisture/liner', 'moisture/permeance', 'moisture/walls-and-cold'],
  },
  {
    subject: 'Air exchange: openings, single-zone models, pressure network',
    files: ['airflow/opening', 'airflow/single-zone', 'airflow/network'],
  },
  {
    subject: 'Heat: undisturbed soil, ISO 13370, steady temperature',
    files: ['ground/undisturbed', 'ground/iso13370', 'ground/steady-temperature'],
  },
  { subject: 'Air states', files: ['psychrometrics/check-rows', 'psychrometrics/other-fits'] },
  { subject: 'Wood: moisture content in humid air', files: ['wood/equilibrium'] },
  { subject: 'The year by the hour', files: ['season/season'] },
  {
    subject: 'Dehumidifier: surfaces, design day, pull-down',
    files: ['dehumidifier/surfaces', 'dehumidifier/sizing', 'dehumidifier/pull-down'],
  },
].map(({ subject, files }) => ({
  subject,
  files: files.map((file) => `packages/engine/test/${file}.published.test.ts`),
}));

/** The counts by subject, as lines of a page. */
export function checkLines(counts: readonly CheckCount[]): string[] {
  const lines = ['| subject | checks that pass | of | topics and tests |', '|---|--:|--:|---|'];
  let passed = 0;
  let total = 0;
  for (const { subject, files } of CHECKED) {
    const own = counts.filter((count) => files.includes(count.file));
    const sum = (pick: (count: CheckCount) => number) => own.reduce((all, count) => all + pick(count), 0);
    passed += sum((count) => count.passed);
    total += sum((count) => count.total);
    const topics = files.map((file) => topicsOf(file, own)).join('<br>');
    lines.push(
      `| ${subject} | ${sum((count) => count.passed)} | ${sum((count) => count.total)} | ${topics} |`,
    );
  }
  lines.push(`| **all** | **${passed}** | **${total}** | |`);
  return lines;
}

function topicsOf(file: string, counts: readonly CheckCount[]): string {
  const own = counts.filter((count) => count.file === file);
  const short = file.replace('packages/engine/test/', '').replace('.published.test.ts', '');
  const topics = own.map(
    ({ topic, passed, total }) => `${topic}: ${passed}${passed === total ? '' : ` of ${total}`}`,
  );
  return `[${short}](../${file}) ${topics.join('; ')}`;
}
