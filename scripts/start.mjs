// npm start: builds the app where its sources are newer, and serves it on this machine.
// npm start -- --report NAME: assesses a demo job, writes its report and says where it is.
import { spawnSync } from 'node:child_process';
import { existsSync, readdirSync, statSync } from 'node:fs';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { serve } from './serve.mjs';

const PORT = 4173;
const root = fileURLToPath(new URL('..', import.meta.url));
const app = join(root, 'packages/app');

function run(command, args) {
  const { status } = spawnSync(command, args, { cwd: root, stdio: 'inherit' });
  if (status !== 0) process.exit(status ?? 3);
}

/** When the newest file in a folder, or the file itself, was changed [ms]. */
function newest(path) {
  const found = statSync(path, { throwIfNoEntry: false });
  if (found === undefined) return 0;
  if (!found.isDirectory()) return found.mtimeMs;
  return Math.max(0, ...readdirSync(path).map((name) => newest(join(path, name))));
}

function buildAppWhereStale() {
  const built = newest(join(app, 'dist/index.html'));
  const own = ['index.html', 'vite.config.ts', 'package.json', 'public'].map((name) => join(app, name));
  const sources = readdirSync(join(root, 'packages')).flatMap((name) => [
    join(root, 'packages', name, 'src'),
    join(root, 'packages', name, 'fonts'),
  ]);
  if (built > Math.max(...[...own, ...sources].map(newest))) return;
  console.log('Building the app ...');
  run('npm', ['run', '--silent', 'build', '-w', '@undercroft/app']);
}

async function serveApp() {
  buildAppWhereStale();
  const address = await serve(join(app, 'dist'), PORT);
  console.log(`Undercroft is at ${address} with its demo jobs. Ctrl-C stops it.`);
}

function report(job) {
  if (!existsSync(join(root, 'packages/cli/dist/main.js'))) run('npm', ['run', '--silent', 'build']);
  run(process.execPath, [
    join(root, 'packages/cli/bin/undercroft.js'),
    'report',
    job,
    '--out',
    `out/${job}.pdf`,
  ]);
}

const [first, name] = process.argv.slice(2);
if (first === undefined) await serveApp();
else if (first === '--report') report(name ?? 'doubted-liner');
else {
  console.error(`"${first}" is not known. Use npm start, or npm start -- --report NAME.`);
  process.exit(2);
}
