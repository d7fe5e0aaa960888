import type { Source } from '../sources/source.ts';

/** Publications and habits behind the wood figures. */
export const woodSources = {
  woodHandbookCh4: {
    id: 'wood-handbook-2021-ch4',
    citation:
      'Glass and Zelinka, Moisture Relations and Physical Properties of Wood, Wood Handbook ch. 4, FPL-GTR-282, USDA Forest Service, 2021',
    provenance: 'quoted',
  },
} as const satisfies Record<string, Source>;
