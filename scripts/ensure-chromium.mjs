// A Chromium for the browser tests: the one that is here, else Debian's, where this machine lets us install it.
import { spawnSync } from 'node:child_process';
import { existsSync } from 'node:fs';

const PLACES = ['/usr/bin/chromium', '/usr/bin/chromium-browser', '/usr/bin/google-chrome'];

/** Path of a Chromium, or why there is none. */
export function ensureChromium() {
  const named = process.env.UNDERCROFT_CHROMIUM;
  if (named !== undefined) {
    return existsSync(named)
      ? { path: named }
      : { fault: `UNDERCROFT_CHROMIUM names ${named}, which is not there` };
  }
  const here = PLACES.find(existsSync);
  if (here !== undefined) return { path: here };
  if (process.getuid?.() !== 0 || !existsSync('/usr/bin/apt-get')) {
    return { fault: 'no Chromium here; install the package chromium, or name one in UNDERCROFT_CHROMIUM' };
  }
  console.log('No Chromium here: installing it from Debian.');
  const env = { ...process.env, DEBIAN_FRONTEND: 'noninteractive' };
  const steps = [
    ['apt-get', ['-qq', 'update']],
    ['apt-get', ['-qq', '-y', 'install', '--no-install-recommends', 'chromium', 'fonts-dejavu-core']],
  ];
  for (const [command, args] of steps) {
    const { status } = spawnSync(command, args, { stdio: ['ignore', 'ignore', 'inherit'], env });
    if (status !== 0) return { fault: `${command} ${args.join(' ')} ended with ${status}` };
  }
  return existsSync(PLACES[0])
    ? { path: PLACES[0] }
    : { fault: 'Debian installed no Chromium at /usr/bin/chromium' };
}
