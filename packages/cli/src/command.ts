/** Where a command reads and writes, so that it can be run without a process. */
export interface Io {
  /** Standard output. */
  readonly print: (line: string) => void;
  /** Standard error. */
  readonly warn: (line: string) => void;
  /** Short-lived progress; silent when standard error is not a terminal. */
  readonly progress: (line: string) => void;
  readonly cwd: string;
  /** Columns that text for people may take. */
  readonly columns: number;
}

/** An option of a command, for reading and for help. */
export interface Option {
  readonly type: 'string' | 'boolean';
  /** Placeholder of the value in help. */
  readonly value?: string;
  readonly help: string;
}

/** What a command was given. */
export interface Given {
  readonly words: readonly string[];
  readonly options: Readonly<Record<string, string | boolean | undefined>>;
}

/** One command of the program. */
export interface Command {
  readonly name: string;
  /** Words after the name, as they read in help. */
  readonly takes: string;
  /** One short sentence. */
  readonly help: string;
  /** Further paragraphs of the command's own help. */
  readonly more?: readonly string[];
  readonly options: Readonly<Record<string, Option>>;
  /** Lines to show in place of the command's help where the words name something that has help of its own. */
  readonly helpOn?: (words: readonly string[], columns: number) => readonly string[] | undefined;
  /** Gives the exit code: 0 done, 1 a criterion is not met, or a defect is shown, and --strict was asked for. */
  readonly run: (given: Given, io: Io) => Promise<0 | 1>;
}
