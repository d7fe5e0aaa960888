import type { ClimateYear } from '../src/climate/year.ts';
import type { SeasonCase, SeasonWeather } from '../src/season/season-case.ts';
import type { SeasonResult } from '../src/season/season-result.ts';
import type { Source } from '../src/sources/source.ts';

/** A: numbers were read. B: a result in words was read. C: numbers from memory, never gated on. */
type Level = 'A' | 'B' | 'C';

/** One thing that a study reported, in our words. */
interface Statement {
  readonly level: Level;
  readonly says: string;
  readonly source: Source;
}

/** One year to run for a study. */
export interface StudyCase {
  /** Unique within the study. */
  readonly name: string;
  /** Id of the weather, see `weather.ts`. */
  readonly place: string;
  readonly space: (weather: SeasonWeather) => SeasonCase;
}

/** What came of one case; the result has its hourly series. */
export interface Outcome {
  readonly space: SeasonCase;
  readonly weather: ClimateYear;
  readonly result: SeasonResult;
}

/** Looks up the outcome of a case by its name; throws for a name that is none. */
export type Outcomes = (name: string) => Outcome;

/** One row of a comparison. */
export interface Finding {
  /** Names the row; does not hang on results. */
  readonly quantity: string;
  readonly level: Level;
  /** What the study leads one to expect, as the gate. */
  readonly published: string;
  readonly ours: string;
  /** null: shown only, never gated. */
  readonly pass: boolean | null;
  /** For a miss: the reason, or that there is none. */
  readonly why?: string;
}

/** A published study and how the model is held against it. */
export interface Study {
  readonly id: string;
  /** What and where, in one sentence. */
  readonly study: string;
  readonly published: readonly Statement[];
  /** What the description of the study gives and the cases use. */
  readonly given: readonly string[];
  /** What it does not give, and what stands there instead. */
  readonly assumed: readonly string[];
  readonly cases: readonly StudyCase[];
  readonly evaluate: (outcomes: Outcomes) => readonly Finding[];
}
