import type { QuestionParts } from './question.ts';
import type { QuestionKey } from './question-keys.ts';

/** Questions that can be answered. One that is not here is not shown. Each loads when it is first asked. */
const LOADERS: { readonly [K in QuestionKey]?: () => Promise<QuestionParts> } = {
  space: () => import('../screens/space/space.tsx'),
  faults: () => import('../screens/faults/faults.tsx'),
  causes: () => import('../screens/causes/causes.tsx'),
  drying: () => import('../screens/drying/drying.tsx'),
  proof: () => import('../screens/proof/proof.tsx'),
};

/** Keys of the questions that can be answered, in their order. */
export const ANSWERED = Object.keys(LOADERS) as readonly QuestionKey[];

const loading = new Map<QuestionKey, Promise<QuestionParts>>();

/** The parts of a question; those of the first one where it cannot be answered yet. The same promise each time. */
export function partsOf(key: QuestionKey): Promise<QuestionParts> {
  const load = LOADERS[key] ?? LOADERS.space;
  const known = loading.get(key);
  if (known !== undefined) return known;
  const parts = (load as () => Promise<QuestionParts>)();
  loading.set(key, parts);
  parts.catch(() => loading.delete(key));
  return parts;
}
