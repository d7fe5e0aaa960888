// npm start: assesses a demo job, writes its report and says where it is.
import { spawnSync } from 'node:child_process';
import { existsSync } from 'node:fs';
import { fileURLToPath } from 'node:url';

const root = fileURLToPath(new URL('..', import.meta.url));
const command = fileURLToPath(new URL('../packages/cli/bin/undercroft.js', import.meta.url));

if (!existsSync(fileURLToPath(new URL('../packages/cli/dist/main.js', import.meta.url)))) {
  const built = spawnSync('npm', ['run', '--silent', 'build'], { cwd: root, stdio: 'inherit' });
  if (built.status !== 0) process.exit(built.status ?? 3);
}
const job = process.argv[2] ?? 'doubted-liner';
const run = spawnSync(process.execPath, [command, 'report', job, '--out', `out/${job}.pdf`], {
  cwd: root,
  stdio: 'inherit',
});
process.exit(run.status ?? 3);
