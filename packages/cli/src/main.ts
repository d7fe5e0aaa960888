import { run } from './run.ts';

/** Width where no terminal tells its own; wider lines than the most are hard to follow. */
const USUAL_COLUMNS = 100;
const MOST_COLUMNS = 120;

let progressShown = false;

function clearProgress(): void {
  if (progressShown) process.stderr.write('\r\u001b[K');
  progressShown = false;
}

// A reader that has seen enough, such as head, closes the pipe: what is left to print then goes nowhere, and the command
// still ends with its own exit code. Any other trouble with the output, such as a full disk, ends it.
process.stderr.on('error', () => {});
process.stdout.on('error', (error: NodeJS.ErrnoException) => {
  if (error.code === 'EPIPE') return;
  process.stderr.write(`The output cannot be written: ${error.message}. Name another place.\n`);
  process.exit(2);
});

process.exitCode = await run(process.argv.slice(2), {
  cwd: process.cwd(),
  columns: Math.min(MOST_COLUMNS, process.stdout.columns || USUAL_COLUMNS),
  print: (line) => {
    clearProgress();
    process.stdout.write(`${line}\n`);
  },
  warn: (line) => {
    clearProgress();
    process.stderr.write(`${line}\n`);
  },
  progress: (line) => {
    if (!process.stderr.isTTY) return;
    process.stderr.write(`\r\u001b[K${line}`);
    progressShown = true;
  },
});
clearProgress();
