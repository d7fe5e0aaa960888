import type { Assessment } from '@undercroft/assessment';
import type { Job } from '@undercroft/record';
import type { ReportDocument, Section } from '../document/blocks.ts';
import type { ReportExtras } from '../document/extras.ts';
import { reportDocument } from '../document/report.ts';
import type { ReportFonts } from '../fonts.ts';
import { escapeText } from '../svg/escape.ts';
import { blockHtml, richHtml } from './blocks.ts';
import { fontFace, pageStyle } from './style.ts';

const sectionHtml = ({ id, blocks }: Section): string =>
  `<section aria-labelledby="${escapeText(id)}">\n${blocks.map(blockHtml).join('\n')}\n</section>`;

function contents({ sections }: ReportDocument): string {
  const items = sections.map((s) => `<li><a href="#${escapeText(s.id)}">${escapeText(s.title)}</a></li>`);
  return `<nav aria-labelledby="contents"><h2 id="contents">In this report</h2><ol>${items.join('')}</ol></nav>`;
}

/**
 * The report as one HTML file that needs nothing else: fonts and drawings are in it, it runs no script and asks no server.
 * The same job, assessment, fonts and extras give the same text.
 */
export function reportHtml(
  job: Job,
  assessment: Assessment,
  { fonts, ...extras }: ReportExtras & { readonly fonts: ReportFonts },
): string {
  const report = reportDocument(job, assessment, extras);
  const faces = [
    fontFace('Undercroft Text', 400, fonts.text),
    fontFace('Undercroft Text', 700, fonts.textBold),
    fontFace('Undercroft Figures', 400, fonts.figures),
  ];
  return `<!doctype html>
<html lang="en-US">
<head>
<meta charset="utf-8">
<meta name="viewport" content="width=device-width,initial-scale=1">
<title>${escapeText(report.title)}</title>
<style>
${faces.join('\n')}
${pageStyle()}
</style>
</head>
<body>
<a class="skip" href="#report">To the report</a>
<header>
<h1>${escapeText(report.title)}</h1>
<p>${richHtml(report.subtitle)}</p>
</header>
${contents(report)}
<main id="report">
${report.sections.map(sectionHtml).join('\n')}
</main>
<footer>
<p>${escapeText(report.running.job)} · ${escapeText(report.running.date)}. Defers to the local code and to licensed trades.</p>
</footer>
</body>
</html>
`;
}
