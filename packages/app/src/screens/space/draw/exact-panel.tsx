import { geometry, units } from '@undercroft/engine';
import type { Point } from '@undercroft/record';
import { FigurePad } from '../../../parts/figure-pad.tsx';
import { useTexts } from '../../../text/texts.ts';
import { moveBy, selectedThing } from './actions.ts';
import { drawTexts } from './draw-texts.ts';
import type { Editor } from './editor.ts';
import { placeAt } from './keys.ts';
import type { Mode } from './mode.ts';

const WAYS = ['wayUp', 'wayRight', 'wayDown', 'wayLeft'] as const;

/** An exact distance in the direction of the last arrow key, typed with a keyboard: moves, or sets the next corner. */
export function ExactPanel({
  editor,
  mode,
}: {
  readonly editor: Editor;
  readonly mode: Mode & { readonly is: 'exact' };
}) {
  const say = useTexts(drawTexts);
  const { way } = editor.state;
  const azimuth = geometry.directionDeg(way.xM, way.yM) ?? 90;
  const go = async (meters: number) => {
    const by: Point = { xM: way.xM * meters, yM: way.yM * meters };
    editor.go(mode.back);
    if (mode.from !== undefined) {
      await placeAt(editor, { xM: mode.from.xM + by.xM, yM: mode.from.yM + by.yM });
    } else {
      const thing = selectedThing(editor);
      if (thing !== null) await moveBy(editor, thing, by);
    }
  };
  return (
    <FigurePad
      label={say('exactMove', { way: say(WAYS[Math.round(azimuth / 90) % 4]) })}
      typed={mode.typed}
      onType={(typed) => editor.go({ ...mode, typed })}
      onDone={({ nm }) => void go(units.metersFromNanometers(nm))}
    />
  );
}
