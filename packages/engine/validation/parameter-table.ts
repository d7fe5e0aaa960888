import { groundSurface } from '../src/moisture/ground-evaporation.ts';
import { workmanship } from '../src/moisture/liner.ts';
import { defaultSeasonCase } from '../src/season/default-case.ts';
import { fixed, percent } from './figures.ts';
import { floorInsulated } from './parameter-set.ts';

/** The one parameter set, as lines of a page; read from the code that the studies use. */
export function parameterLines(): string[] {
  const base = defaultSeasonCase();
  const rows: readonly (readonly [what: string, value: string, from: string])[] = [
    [
      'plan, height',
      `${base.planAreaM2} m², ${fixed(base.heightM, 1)} m; walls and framing in proportion`,
      'default case',
    ],
    [
      'soil',
      `${fixed(base.soil.conductivityWPerMK, 1)} W/(m·K), sideways ${fixed(base.soil.lateralWPerM2K, 2)} W/(m²·K)`,
      'default case: ISO 13370 (memory), column chosen to its yearly mean (computed)',
    ],
    [
      'bare ground',
      `dry layer of ${groundSurface('average').dryLayerSPerM} s/m (average), ${groundSurface('dry-gravel').dryLayerSPerM} s/m (dry sand or gravel)`,
      'default case; resistances computed to match published rates of bare ground',
    ],
    [
      'sheet',
      `${fixed(1e12 * base.cover.zones[0]!.sheetPermeanceKgPerM2SPa, 1)} ng/(m²·s·Pa); open: laid and lapped ${percent(workmanship('laid-and-lapped').openFraction)}, sealed ${percent(workmanship('sealed').openFraction, 2)}`,
      'default case (ASHRAE Fundamentals, memory); open shares are common practice, never measured',
    ],
    [
      'floor',
      `${fixed(base.house.floorUWPerM2K, 2)} W/(m²·K) bare, ${fixed(floorInsulated(base).house.floorUWPerM2K, 2)} with R-19 and ${fixed(floorInsulated(base, 'R-30').house.floorUWPerM2K, 2)} with R-30 batts`,
      'default case; R-19 as built (ASHRAE Fundamentals, memory), R-30 in proportion (computed)',
    ],
    [
      'walls',
      `${fixed(base.walls.aboveGradeUWPerM2K, 1)} above and ${fixed(base.walls.belowGradeUWPerM2K, 1)} W/(m²·K) below grade; foam adds its R-value`,
      'default case (memory)',
    ],
    [
      'house',
      `${base.house.heatingTemperatureC} °C heated, ${base.house.coolingTemperatureC} °C cooled, at most ${percent(base.house.coolingRelativeHumidity, 0)} when cooled`,
      'default case (common practice)',
    ],
    [
      'air',
      'pressure network with its usual leaks; vents of 1/150 of the plan unless the study says otherwise',
      'network assumptions, each with its source; vents by the US residential code',
    ],
    [
      'a closed space',
      'vents and walls sealed, door weatherstripped, sheet sealed on ground and walls',
      'description of the field studies',
    ],
    [
      'supply register',
      'where a study has one, 1 cfm for 30 ft² while the air handler runs',
      'design of the Princeville houses (read)',
    ],
    [
      'air handler',
      `runs from nothing at ${base.ducts.heatingStartC} °C to always at ${fixed(base.ducts.heatingFullC, 0)} °C (heating), ${base.ducts.coolingStartC} to ${base.ducts.coolingFullC} °C (cooling)`,
      'default case (common practice)',
    ],
    [
      'wood',
      `${fixed((base.wood.joists.surfaceMassKg + base.wood.joists.coreMassKg) / base.planAreaM2, 1)} kg/m² of joists and floor, core time ${base.wood.joists.coreDays} days`,
      'default case: geometry and slab diffusion (computed)',
    ],
  ];
  return [
    '## The one parameter set',
    '',
    'The default case of the season (`packages/engine/src/season/default-case.ts`), changed only by what the description of a',
    'study gives, through the same few functions for all (`packages/engine/validation/parameter-set.ts`).',
    '',
    '| | value | where from |',
    '|---|---|---|',
    ...rows.map(([what, value, from]) => `| ${what} | ${value} | ${from} |`),
    '',
  ];
}
