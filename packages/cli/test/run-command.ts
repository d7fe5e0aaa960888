import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { onTestFinished } from 'vitest';
import { run } from '../src/run.ts';

/** What a command did, as a person at a terminal would see it. */
export interface Ran {
  readonly code: 0 | 1 | 2 | 3;
  readonly out: string;
  readonly err: string;
  /** What stood on the progress line, in order. */
  readonly progress: readonly string[];
}

/** Runs the command in this process. */
export async function command(args: readonly string[], cwd = '/', columns = 100): Promise<Ran> {
  const out: string[] = [];
  const err: string[] = [];
  const progress: string[] = [];
  const code = await run(args, {
    cwd,
    columns,
    print: (line) => out.push(`${line}\n`),
    warn: (line) => err.push(`${line}\n`),
    progress: (line) => progress.push(line),
  });
  return { code, out: out.join(''), err: err.join(''), progress };
}

/** A folder of its own for one test, gone after it. */
export function ownFolder(): string {
  const folder = mkdtempSync(join(tmpdir(), 'undercroft-cli-'));
  onTestFinished(() => rmSync(folder, { recursive: true, force: true }));
  return folder;
}
