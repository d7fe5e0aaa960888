// Runs dependency-cruiser and refuses a green answer over no modules at all
// (a TypeScript version that it cannot read makes it cruise nothing and report no violation).
import { spawnSync } from 'node:child_process';

const run = spawnSync(
  'npx',
  ['depcruise', '--config', '.dependency-cruiser.cjs', '--output-type', 'json', 'packages'],
  { encoding: 'utf8', maxBuffer: 1 << 28 },
);
if (!run.stdout) {
  console.error(run.stderr);
  process.exit(2);
}
const { summary, modules } = JSON.parse(run.stdout);
const ours = modules.filter((m) => /^packages\/[^/]+\/src\//.test(m.source));
for (const v of summary.violations) console.error(`${v.rule.name}: ${v.from} -> ${v.to}`);
console.log(`${ours.length} modules checked, ${summary.violations.length} wrong arrows`);
process.exit(ours.length > 0 && summary.violations.length === 0 ? 0 : 1);
