#!/usr/bin/env node
import('../dist/main.js').catch((error) => {
  const unbuilt = error.code === 'ERR_MODULE_NOT_FOUND' && error.message.includes('dist');
  const what = unbuilt
    ? 'undercroft is not built yet. Run "npm ci" or "npm run build" at the root of the repository.'
    : error.stack;
  process.stderr.write(`${what}\n`);
  process.exitCode = 3;
});
