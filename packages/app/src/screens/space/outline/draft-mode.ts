import type { Mode } from '../draw/mode.ts';
import type { OutlineDraft } from './outline-draft.ts';

/** The step at which the drawing of walls goes on. */
export function draftMode(draft: OutlineDraft): Mode {
  if (draft.by === 'grid') return { is: 'corners' };
  if (draft.by === 'rectangle') return { is: 'rectangle' };
  return { is: 'walls', step: draft.legs.length === 0 ? 'length' : 'turn' };
}
