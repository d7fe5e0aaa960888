import type { ColorName } from '../look/tokens.ts';

/** Size, line height, space before and after [points]; what color. */
export interface TypeStyle {
  readonly size: number;
  readonly leading: number;
  readonly before: number;
  readonly after: number;
  readonly color: ColorName;
  readonly bold?: boolean;
}

/** Lettering of the printed report. Nothing is under 6.5 points. */
export const TYPE = {
  title: { size: 22, leading: 27, before: 0, after: 3, color: 'ink', bold: true },
  subtitle: { size: 10, leading: 14, before: 0, after: 12, color: 'soft' },
  section: { size: 15.5, leading: 19, before: 24, after: 6, color: 'ink', bold: true },
  part: { size: 11.5, leading: 15, before: 15, after: 3, color: 'ink', bold: true },
  lead: { size: 13, leading: 18, before: 0, after: 10, color: 'ink' },
  body: { size: 10, leading: 14, before: 0, after: 7, color: 'ink' },
  note: { size: 8.5, leading: 11.5, before: 0, after: 6, color: 'soft' },
  caption: { size: 8.5, leading: 11, before: 2, after: 3, color: 'soft' },
  cell: { size: 8.6, leading: 11.4, before: 0, after: 2, color: 'ink' },
  head: { size: 7.8, leading: 10, before: 0, after: 0, color: 'soft' },
  running: { size: 7.8, leading: 10, before: 0, after: 0, color: 'soft' },
} as const satisfies Record<string, TypeStyle>;

/** Names under which the fonts are known to the PDF library. */
export const FONTS = { text: 'Text', strong: 'TextBold', figures: 'Figures' } as const;

/** Letter paper and its margins [points]; 18 mm, as on every paper of the project. */
export const PAPER = { width: 612, height: 792, margin: (18 / 25.4) * 72 } as const;
