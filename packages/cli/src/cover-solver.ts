import type { coverage } from '@undercroft/engine';

/**
 * Branches after which the solver stops: about a minute for 280 m² with 60 piers. A limit in branches and not in seconds,
 * so that the same plan comes out on a slow machine.
 */
const MOST_BRANCHES = 200;

type Problem = Parameters<coverage.CoverSolver>[0];

/** The problem as text that solvers of mixed-integer programs read (the LP format). */
function programText({ candidateCount, rows }: Problem): string {
  const all = Array.from({ length: candidateCount }, (_, i) => `x${i}`);
  return [
    'Minimize',
    ` stations: ${all.join(' + ')}`,
    'Subject To',
    ...rows.map((row, i) => ` r${i}: ${row.map((c) => `x${c}`).join(' + ')} >= 1`),
    'Binary',
    ` ${all.join(' ')}`,
    'End',
  ].join('\n');
}

/** HiGHS, which takes a moment to load, once for a program. */
let loading: ReturnType<typeof loadHighs> | undefined;

async function loadHighs() {
  const loaded = await import('highs');
  // The types of the package put the loader one level deeper than its module does.
  const load = loaded.default as unknown as typeof loaded.default.default;
  return load();
}

/**
 * A solver for the fewest stations where the engine's own search does not prove them: HiGHS, loaded when it is first
 * asked. Null where it has found nothing within its branches.
 */
export const solveCover: coverage.CoverSolver = async (problem) => {
  if (problem.rows.length === 0) return { chosen: [], lowerBound: 0 };
  loading ??= loadHighs();
  const highs = await loading;
  return highs.withModel({ format: 'lp', data: programText(problem) }, (model) => {
    model.options.set({ output_flag: false, mip_max_nodes: MOST_BRANCHES });
    model.run();
    const values = model.getSolution().colValue;
    const chosen = Array.from(values, (value, i) => (value > 0.5 ? i : -1)).filter((i) => i >= 0);
    const covered = problem.rows.every((row) => row.some((c) => chosen.includes(c)));
    if (!covered) return null;
    return { chosen, lowerBound: Number(model.info.get('mip_dual_bound')) };
  });
};
