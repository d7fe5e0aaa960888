import { units } from '@undercroft/engine';
import type { Job } from '@undercroft/record';
import { shapeOf, wallOf } from '../../../plan/shape.ts';
import { LISTS, type Thing } from '../../../plan/things.ts';
import { wallsOf } from '../../../plan/walls.ts';
import { useSettings } from '../../../settings/settings.ts';
import { useTexts } from '../../../text/texts.ts';
import { drawTexts } from './draw-texts.ts';
import { kindTexts, optionTexts } from './kind-texts.ts';
import { specOf } from './kinds.ts';

/** What a thing is called, and its numbers in a line. */
export interface Names {
  nameOf(thing: Thing): string;
  numbersOf(thing: Thing): string;
  length(meters: number): string;
  option(value: string): string;
}

/** Names of the things of a job, in the language and units that are set. */
export function useNames(job: Job | null): Names {
  const say = useTexts(drawTexts);
  const kinds = useTexts(kindTexts);
  const options = useTexts(optionTexts);
  const { units: system } = useSettings();
  const length = (meters: number) => units.formatQuantity(meters, 'length', system);
  const option = (value: string) => options(value as keyof (typeof optionTexts)['en']);
  const place = (at: { readonly xM: number; readonly yM: number }) => `${signed(at.xM)} / ${signed(at.yM)}`;
  const signed = (meters: number) => length(meters).replace('-', '−');
  const onWall = (wallId: string | undefined, offsetM: number) => {
    const walls = wallsOf(job);
    const wall = wallOf(walls, wallId);
    return wall === undefined
      ? say('noWall')
      : `${say('wallNumber', { number: wall.inputIndex + 1 })} + ${length(offsetM)}`;
  };
  const numbersOf = (thing: Thing): string => {
    switch (thing.kind) {
      case 'pier': {
        const { widthM, depthM, at } = thing.value;
        return `${length(widthM)} × ${length(depthM)}, ${place(at)}`;
      }
      case 'vent':
        return `${length(thing.value.widthM)} × ${length(thing.value.heightM)}, ${onWall(thing.value.wallId, thing.value.offsetM)}`;
      case 'door': {
        const { widthM, heightM, wallId, offsetM = 0, at } = thing.value;
        return `${length(widthM)} × ${length(heightM)}, ${at === undefined ? onWall(wallId, offsetM) : place(at)}`;
      }
      case 'height':
        return `${length(thing.value.clearHeightM)}, ${place(thing.value.at)}`;
      case 'equipment':
        return `${option(thing.value.kind)}, ${place(thing.value.at)}`;
      case 'joists':
        return `${length(thing.value.spacingM)}, ${Math.round(thing.value.bearingDeg)}°`;
      case 'wall':
        return [
          onWall(thing.value.wallId, 0).replace(/ \+ .*/, ''),
          thing.value.material === undefined ? '' : option(thing.value.material),
        ]
          .filter(Boolean)
          .join(', ');
      case 'zone':
        return `${thing.value.name}, ${option(thing.value.ground.cover)}`;
      case 'obstacle':
        return thing.value.what;
      default: {
        const shape = shapeOf(thing, wallsOf(job));
        return shape?.is === 'line'
          ? `${place(shape.path[0])} → ${place(shape.path[shape.path.length - 1])}`
          : '';
      }
    }
  };
  const nameOf = (thing: Thing): string => {
    const list: readonly { readonly id: string }[] = job?.plan[LISTS[thing.kind]] ?? [];
    const number = list.findIndex(({ id }) => id === thing.value.id) + 1;
    return say('thing', { name: kinds(specOf(thing).name), number });
  };
  return { nameOf, numbersOf, length, option };
}
