import type { Drawing, Room } from '../drawing/display-list.ts';
import type { MarkName } from '../drawing/marks.ts';

/** A run of text in one look. */
export interface Words {
  readonly text: string;
  /** `figure` is the tabular face for numbers, `soft` secondary text. */
  readonly look?: 'strong' | 'soft' | 'figure';
  /** Underlined with dashes: nobody measured it. */
  readonly assumed?: boolean;
}

/** A mark; its word stands beside it, so it is left out where only words are read. */
export interface Mark {
  readonly mark: MarkName;
}

export type Inline = Words | Mark;
/** One paragraph of inline parts. */
export type Rich = readonly Inline[];

export interface Heading {
  readonly kind: 'heading';
  /** 2 opens a section, 3 a part of one. The title of the report is 1. */
  readonly level: 2 | 3;
  readonly text: string;
  readonly id: string;
}

/**
 * Where the figures of a block come from, as `traceOf` of the assessment reads it, e.g. `criteria/LIN-08a`. What has none
 * of its own goes by that of its section.
 */
export interface Traced {
  readonly from?: string;
}

export interface Paragraph extends Traced {
  readonly kind: 'paragraph';
  readonly text: Rich;
  /** `lead` is the finding in large type, `note` small type. */
  readonly role?: 'lead' | 'note';
}

export interface List {
  readonly kind: 'list';
  readonly items: readonly Rich[];
}

export interface Column {
  readonly title: string;
  /** Share of the width. */
  readonly weight: number;
  /** `end` for figures, which then line up by their last digit. */
  readonly align?: 'start' | 'end';
}

/** A cell: paragraphs one below the other. */
export type Cell = readonly Rich[];

/** A table. The first cell of each row names the row. */
export interface Table {
  readonly kind: 'table';
  readonly caption: string;
  readonly columns: readonly Column[];
  readonly rows: readonly (readonly Cell[])[];
  /** Where the figures of each row come from, one for each; that of the section where it is absent. */
  readonly rowsFrom?: readonly string[];
  /** True where names and values stand without a head, as in a list of facts. */
  readonly headless?: boolean;
  /** True where the columns are narrow enough to stay side by side on a phone. */
  readonly compact?: boolean;
}

export interface Figure extends Traced {
  readonly kind: 'figure';
  readonly id: string;
  readonly caption: string;
  /**
   * `sheet`: fills a page of its own on paper, drawn to a standard scale there. `inline`: stands in the text at the width
   * of the column, and is drawn anew for a narrow screen.
   */
  readonly placement: 'sheet' | 'inline';
  readonly onScreen: (room: Room) => Drawing;
  readonly onPaper: (room: Required<Room>) => Drawing;
}

/** Counts that decide, in large figures, each with its mark and word. */
export interface Tally extends Traced {
  readonly kind: 'tally';
  readonly entries: readonly { readonly mark: MarkName; readonly count: number; readonly words: string }[];
}

/** A photo of the record as it can be shown. */
export interface Picture {
  /** JPEG or PNG, without what the camera wrote about its place. */
  readonly bytes: Uint8Array;
  readonly mediaType: 'image/jpeg' | 'image/png';
  readonly width: number;
  readonly height: number;
}

/** One picture of the gallery with where it was taken. */
export interface GalleryEntry extends Traced {
  readonly id: string;
  /** What it shows, in words, for those who do not see it. */
  readonly description: string;
  /** Absent where the bytes are not at hand or cannot be shown. */
  readonly picture?: Picture;
  readonly plan: (room: { readonly width: number; readonly height: number }) => Drawing;
  /** Paragraphs beside it, the first with its number. */
  readonly text: Cell;
}

/** Pictures side by side, each with a small plan. */
export interface Gallery {
  readonly kind: 'gallery';
  readonly entries: readonly GalleryEntry[];
}

export type Block = Heading | Paragraph | List | Table | Figure | Tally | Gallery;

export interface Section {
  readonly id: string;
  readonly title: string;
  /** Where its figures come from, but for those of blocks and rows that say it themselves. */
  readonly from: string;
  readonly blocks: readonly Block[];
}

/** The report before it becomes HTML or PDF. */
export interface ReportDocument {
  readonly title: string;
  readonly subtitle: Rich;
  /** For the running head. */
  readonly running: { readonly job: string; readonly date: string };
  /** Calendar date that the file is dated with, ISO 8601. */
  readonly datedOn: string;
  readonly sections: readonly Section[];
}

export const words = (text: string): Rich => [{ text }];
export const strong = (text: string): Words => ({ text, look: 'strong' });
export const soft = (text: string): Words => ({ text, look: 'soft' });
export const figure = (text: string): Words => ({ text, look: 'figure' });
export const cell = (...inlines: Inline[]): Cell => [inlines];
export const paragraph = (text: string, role?: Paragraph['role'], from?: string): Paragraph => ({
  kind: 'paragraph',
  text: words(text),
  ...(role === undefined ? {} : { role }),
  ...(from === undefined ? {} : { from }),
});
export const heading = (level: 2 | 3, text: string, id: string): Heading => ({
  kind: 'heading',
  level,
  text,
  id,
});

/** The bare text of a paragraph. */
export const textOf = (rich: Rich): string => rich.map((part) => ('mark' in part ? '' : part.text)).join('');
