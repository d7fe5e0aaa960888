import { useEffect } from 'react';
import type { FormDraft } from '../../jobs/use-form-draft.ts';
import type { SheetWish } from '../../shell/tool-sheet.tsx';
import type { MeasureForm, MeasureKind } from './measure-form.ts';

const KINDS: readonly string[] = ['air', 'surface', 'wood', 'level', 'quantity', 'instruments'];

/** Opens the form that somebody asked for elsewhere, e.g. on the list of what is missing. */
export function useWish(wish: SheetWish | null, { change }: FormDraft<MeasureForm>): void {
  // biome-ignore lint/correctness/useExhaustiveDependencies: each wish counts once
  useEffect(() => {
    if (wish?.kind === undefined || !KINDS.includes(wish.kind)) return;
    change({
      kind: wish.kind as MeasureKind,
      isPlacing: false,
      typed: {},
      saved: [],
      quantity: wish.quantity ?? '',
      ...(wish.where === 'outdoor' || wish.where === 'crawl' || wish.where === 'house'
        ? { where: wish.where }
        : {}),
    });
  }, [wish]);
}
