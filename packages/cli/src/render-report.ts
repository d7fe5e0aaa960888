import { readFile } from 'node:fs/promises';
import { createRequire } from 'node:module';
import type { Assessment } from '@undercroft/assessment';
import type { Job } from '@undercroft/record';
import { FONT_FILES, type ReportExtras, type ReportFonts, reportHtml, reportPdf } from '@undercroft/report';

const resolveFrom = createRequire(import.meta.url);

async function font(file: string): Promise<Uint8Array> {
  return readFile(resolveFrom.resolve(`@undercroft/report/fonts/${file}`));
}

async function fonts(): Promise<ReportFonts> {
  const [text, textBold, figures] = await Promise.all([
    font(FONT_FILES.text),
    font(FONT_FILES.textBold),
    font(FONT_FILES.figures),
  ]);
  return { text, textBold, figures };
}

/** The report as one HTML file that needs nothing else. */
export async function renderHtml(
  job: Job,
  assessment: Assessment,
  extras: ReportExtras = {},
): Promise<string> {
  return reportHtml(job, assessment, { fonts: await fonts(), ...extras });
}

/** The report as PDF. */
export async function renderPdf(
  job: Job,
  assessment: Assessment,
  extras: ReportExtras = {},
): Promise<Uint8Array> {
  return reportPdf(job, assessment, { fonts: await fonts(), ...extras });
}
