export type { ReportFonts } from './fonts.ts';
export { FONT_FILES } from './fonts.ts';
export { reportHtml } from './html/report-html.ts';
export type { GroundName } from './look/tokens.ts';
export { reportPdf } from './pdf/report-pdf.ts';
export type { PlanSvgOptions } from './svg/plan-svg.ts';
export { planSvg } from './svg/plan-svg.ts';
