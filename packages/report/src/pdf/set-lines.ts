import type { Inline, Rich } from '../document/blocks.ts';
import type { MarkName } from '../drawing/marks.ts';
import type { ColorName } from '../look/tokens.ts';
import type { TypeStyle } from './type-styles.ts';

export type Face = 'text' | 'strong' | 'figures';

/** A run of text on a line, at its place from the left edge. */
export interface Run {
  readonly x: number;
  readonly width: number;
  readonly text: string;
  readonly face: Face;
  readonly color: ColorName;
  readonly assumed: boolean;
}

export interface PlacedMark {
  readonly x: number;
  readonly mark: MarkName;
}

/** One line of set text. */
export interface Line {
  readonly runs: readonly Run[];
  readonly marks: readonly PlacedMark[];
  readonly width: number;
}

/** Width of a text in a face and size [points]. */
export type Measure = (text: string, face: Face, size: number) => number;

/** A mark takes this much of the size, with its gap. */
const MARK_ADVANCE = 1.35;

/** A word longer than this may break after a slash. */
const LONG = 24;

interface Piece {
  readonly text: string;
  readonly space: boolean;
  readonly face: Face;
  readonly color: ColorName;
  readonly assumed: boolean;
}

function faceOf(part: Exclude<Inline, { mark: MarkName }>, style: TypeStyle): Face {
  if (part.look === 'figure') return 'figures';
  return part.look === 'strong' || style.bold === true ? 'strong' : 'text';
}

/** Characters that no face has a picture for and no reader reads. */
const UNFIT = /\p{Cc}|\p{Cs}|[\ufffe\uffff]/gu;

/** Words and the spaces between them, each in its look. */
function piecesOf(rich: Rich, style: TypeStyle): (Piece | { readonly mark: MarkName })[] {
  return rich.flatMap((part): (Piece | { readonly mark: MarkName })[] => {
    if ('mark' in part) return [{ mark: part.mark }];
    const look = {
      face: faceOf(part, style),
      color: part.look === 'soft' ? 'soft' : style.color,
      assumed: part.assumed === true,
    } as const;
    const clean = part.text.replace(/[\t\n\r]+/g, ' ').replace(UNFIT, '');
    return clean
      .split(/( +)/)
      .flatMap((text) => (text.length > LONG ? text.split(/(?<=\/)/) : [text]))
      .filter((text) => text !== undefined && text !== '')
      .map((text) => ({ text, space: text.trim() === '' && !text.includes('\u00a0'), ...look }));
  });
}

/** A word wider than a whole line, cut where the line is full. */
function cutLong(piece: Piece, room: number, size: number, measure: Measure): Piece[] {
  if (piece.space || measure(piece.text, piece.face, size) <= room) return [piece];
  const parts: Piece[] = [];
  let current = '';
  for (const sign of piece.text) {
    if (current !== '' && measure(current + sign, piece.face, size) > room) {
      parts.push({ ...piece, text: current });
      current = '';
    }
    current += sign;
  }
  return [...parts, { ...piece, text: current }];
}

class LineBuilder {
  readonly #measure: Measure;
  readonly #size: number;
  #runs: Run[] = [];
  #marks: PlacedMark[] = [];
  #x = 0;

  constructor(measure: Measure, size: number) {
    this.#measure = measure;
    this.#size = size;
  }

  get width(): number {
    return this.#x;
  }

  get empty(): boolean {
    return this.#runs.length === 0 && this.#marks.length === 0;
  }

  add(piece: Piece): void {
    const last = this.#runs.at(-1);
    const same =
      last !== undefined &&
      last.face === piece.face &&
      last.color === piece.color &&
      last.assumed === piece.assumed &&
      Math.abs(last.x + last.width - this.#x) < 1e-6;
    const { text, face, color, assumed } = piece;
    const whole = same ? last.text + text : text;
    const x = same ? last.x : this.#x;
    const run = { x, width: this.#measure(whole, face, this.#size), text: whole, face, color, assumed };
    if (same) this.#runs[this.#runs.length - 1] = run;
    else this.#runs.push(run);
    this.#x = run.x + run.width;
  }

  addMark(mark: MarkName): void {
    this.#marks.push({ x: this.#x, mark });
    this.#x += MARK_ADVANCE * this.#size;
  }

  take(): Line {
    const line = { runs: this.#runs.map((r) => this.#trimmed(r)), marks: this.#marks, width: this.#x };
    this.#runs = [];
    this.#marks = [];
    this.#x = 0;
    return line;
  }

  #trimmed(run: Run): Run {
    if (run !== this.#runs.at(-1) || !run.text.endsWith(' ')) return run;
    const text = run.text.trimEnd();
    return { ...run, text, width: this.#measure(text, run.face, this.#size) };
  }
}

/** Breaks a paragraph into lines of at most `room` points. An empty paragraph has no lines. */
export function setLines(rich: Rich, style: TypeStyle, room: number, measure: Measure): Line[] {
  const { size } = style;
  const lines: Line[] = [];
  const builder = new LineBuilder(measure, size);
  for (const piece of piecesOf(rich, style)) {
    if ('mark' in piece) {
      if (builder.width + MARK_ADVANCE * size > room && !builder.empty) lines.push(builder.take());
      builder.addMark(piece.mark);
      continue;
    }
    for (const part of cutLong(piece, room, size, measure)) {
      if (part.space && builder.empty) continue;
      const width = part.space ? 0 : measure(part.text, part.face, size);
      if (!builder.empty && builder.width + width > room + 0.01) {
        lines.push(builder.take());
        if (part.space) continue;
      }
      builder.add(part);
    }
  }
  if (!builder.empty) lines.push(builder.take());
  return lines;
}
