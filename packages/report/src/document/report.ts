import type { Assessment } from '@undercroft/assessment';
import type { Job } from '@undercroft/record';
import { day } from '../words/dates.ts';
import type { ReportDocument, Section } from './blocks.ts';
import { entriesOfReport, withEntries } from './entries-named.ts';
import type { ReportExtras } from './extras.ts';
import { air } from './sections/air.ts';
import { causes } from './sections/causes.ts';
import { assumptions, cautions, sources, standing } from './sections/closing.ts';
import { met, notMet, notShown } from './sections/criteria.ts';
import { defects } from './sections/defects.ts';
import { entriesSection } from './sections/entries.ts';
import { readings } from './sections/readings.ts';
import { seen } from './sections/seen.ts';
import { shown } from './sections/shown.ts';
import { summary } from './sections/summary.ts';
import { water } from './sections/water.ts';
import { year } from './sections/year.ts';

/** Makes one section of the report, or none where its subject was not worked out. A new subject is one more of these. */
export type SectionMaker = (job: Job, assessment: Assessment, extras: ReportExtras) => Section | undefined;

/** The sections in the order in which an owner asks: what is there, what is wrong, why, what to mind. */
const SECTIONS: readonly SectionMaker[] = [
  summary,
  seen,
  shown,
  readings,
  defects,
  notMet,
  notShown,
  met,
  water,
  air,
  causes,
  year,
  cautions,
  assumptions,
  sources,
  standing,
];

/** Date of a report whose job has none: a file needs one, and the clock is never read. */
const UNDATED = '2000-01-01';

/** All sections; with a log behind the job they name its entries, and a list of these is the last but one. */
function sectionsOf(job: Job, assessment: Assessment, extras: ReportExtras): Section[] {
  const made = SECTIONS.map((make) => make(job, assessment, extras)).filter((s) => s !== undefined);
  const { record } = extras;
  if (record === undefined) return made;
  const entries = entriesOfReport(record.log);
  const named = made.map((section) => withEntries(section, job, assessment, entries));
  return [...named.slice(0, -1), entriesSection(job, entries, record.frozen), ...named.slice(-1)];
}

/** The report of a job as one document, which HTML and PDF are made from. */
export function reportDocument(job: Job, assessment: Assessment, extras: ReportExtras = {}): ReportDocument {
  const { header } = job;
  const surveyedOn = assessment.job.surveyedOn;
  const date = surveyedOn === undefined ? 'Survey not dated' : day(surveyedOn);
  const by = header.surveyedBy.length === 0 ? '' : ` by ${header.surveyedBy.join(', ')}`;
  return {
    title: header.title,
    subtitle: [
      {
        text:
          surveyedOn === undefined
            ? 'Survey of a crawl space, not dated'
            : `Survey of a crawl space, ${date}${by}`,
      },
    ],
    running: { job: header.title, date },
    datedOn: surveyedOn ?? UNDATED,
    sections: sectionsOf(job, assessment, extras),
  };
}
