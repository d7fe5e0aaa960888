// npm run bench [-- --json] [-- --only PREFIX]
// Measures speed and memory of what each packages/*/bench/*.bench.ts lists, each file in a process of its own.
// A bench file exports `benches`: { id, goal, unit?: 'ms', run, plain?, rounds? } for time (the median of warm rounds
// in milliseconds; `plain` is a plain reference of the same answer, run in the same process for the ratio, or one of
// `plainTimes` equal parts of it; `measure` in place of `run` gives the figure itself, in `unit`), or { id, goal, unit: 'MB', run } for the resident memory of the process after `run`.
// Prints one JSON array of { id, median, unit, goal, ratio } or the same as a table.
import { spawnSync } from 'node:child_process';
import { readdirSync } from 'node:fs';
import { performance } from 'node:perf_hooks';
import { fileURLToPath, pathToFileURL } from 'node:url';

const self = fileURLToPath(import.meta.url);
const root = fileURLToPath(new URL('..', import.meta.url));

function median(values) {
  const sorted = [...values].sort((a, b) => a - b);
  return sorted[Math.floor(sorted.length / 2)];
}

async function timed(run, rounds, warm, measures = false) {
  for (let i = 0; i < warm; i += 1) await run();
  const times = [];
  for (let i = 0; i < rounds; i += 1) {
    const start = performance.now();
    const measured = await run();
    times.push(measures ? measured : performance.now() - start);
  }
  return median(times);
}

async function measureFile(path, only) {
  const { benches } = await import(pathToFileURL(path).href);
  const rows = [];
  for (const b of benches) {
    if (only && !b.id.startsWith(only)) continue;
    if (b.unit === 'MB') {
      await b.run();
      rows.push({ id: b.id, median: process.memoryUsage().rss / 1e6, unit: 'MB', goal: b.goal, ratio: null });
      continue;
    }
    const ours = await timed(b.measure ?? b.run, b.rounds ?? 9, b.warm ?? 2, b.measure !== undefined);
    const plain = b.plain ? await timed(b.plain, b.plainRounds ?? 3, 0) : null;
    rows.push({
      id: b.id,
      median: ours,
      unit: b.unit ?? 'ms',
      goal: b.goal,
      ratio: plain === null ? null : ((b.plainTimes ?? 1) * plain) / ours,
    });
  }
  return rows;
}

if (process.argv[2] === '--file') {
  // What a bench has started, such as a server, does not keep its process alive.
  const rows = await measureFile(process.argv[3], process.argv[4]);
  process.stdout.write(`\n@@${JSON.stringify(rows)}`, () => process.exit(0));
} else {
  const json = process.argv.includes('--json');
  const onlyAt = process.argv.indexOf('--only');
  const only = onlyAt > 0 ? process.argv[onlyAt + 1] : '';
  for (const args of [['-b'], ['-p', 'tsconfig.bench.json']]) {
    const built = spawnSync('npx', ['tsc', ...args], { cwd: root, encoding: 'utf8' });
    if (built.status !== 0) {
      console.error(built.stdout);
      process.exit(2);
    }
  }
  const rows = [];
  const compiled = readdirSync(`${root}/out/bench/packages`, { recursive: true })
    .filter((f) => f.endsWith('.bench.js'))
    .map((f) => `${root}/out/bench/packages/${f}`);
  const files = [...compiled, `${root}/packages/app/bench/app.bench.mjs`].sort();
  for (const file of files) {
    const run = spawnSync(process.execPath, [self, '--file', file, only], {
      encoding: 'utf8',
    });
    if (run.status !== 0) {
      console.error(run.stderr);
      process.exit(3);
    }
    rows.push(...JSON.parse(run.stdout.split('\n@@')[1]));
  }
  if (json) console.log(JSON.stringify(rows));
  else {
    for (const r of rows) {
      const verdict = r.median <= r.goal ? 'within goal' : 'MISSED';
      const ratio = r.ratio === null ? '' : `, ${r.ratio.toFixed(1)} x the plain reference`;
      console.log(
        `${r.id.padEnd(28)} ${r.median.toPrecision(3).padStart(8)} ${r.unit}  goal ${r.goal}  ${verdict}${ratio}`,
      );
    }
  }
}
