/** Font files of the report, TrueType, by the face that they hold. They lie in this package's `fonts` folder. */
export const FONT_FILES = {
  text: 'undercroft-text.ttf',
  textBold: 'undercroft-text-bold.ttf',
  figures: 'undercroft-figures.ttf',
} as const;

/** Bytes of the fonts. They are handed in, so that making a report reads no file and works in a browser too. */
export interface ReportFonts {
  readonly text: Uint8Array;
  readonly textBold: Uint8Array;
  readonly figures: Uint8Array;
}
