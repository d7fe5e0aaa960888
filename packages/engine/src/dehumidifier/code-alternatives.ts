import { standardAirKgPerM3 } from '../moisture/crawl-air.ts';
import type { Notice } from '../numerics/notice.ts';
import { requireRange } from '../numerics/require-range.ts';
import { convert } from '../units/convert.ts';
import { convertCapacity } from './rating-points.ts';
import { relativeCapacity } from './surfaces.ts';

/** 1 cfm per 50 ft², in m³/s per m². */
const AIR_M3_PER_S_M2 = convert(1, 'cfm', 'm3/s') / convert(50, 'ft2', 'm2');
/** 70 pints/day per 1000 ft², in kg/day per m². */
const WATER_KG_PER_DAY_M2 = convert(70, 'pint/day', 'kg/day') / convert(1000, 'ft2', 'm2');

/** Air that one of the options would bring in. */
export interface OptionAir {
  readonly humidityRatio: number;
  /** Share of the time that the air flows, 0..1; 1 when absent. */
  readonly share?: number;
}

/** What the options are held against. */
export interface CodeComparison {
  readonly floorAreaM2: number;
  /** Air to hold in the space. */
  readonly temperatureC: number;
  readonly relativeHumidity: number;
  /** kg/kg at that air. */
  readonly humidityRatio: number;
  readonly pressurePa: number;
  /** Load at that air without the option, kg/day. */
  readonly loadKgPerDay: number;
  /** House air, which an exhaust fan draws down; unknown when absent. */
  readonly houseAir?: OptionAir;
  /** Air of the supply branch; unknown when absent. */
  readonly supplyAir?: OptionAir;
}

/** One way by which the code lets a closed crawl space be kept dry. */
export interface CodeOption {
  readonly key: 'exhaust' | 'supply' | 'plenum' | 'dehumidifier';
  readonly title: string;
  /** Air that it asks for, m³/s. */
  readonly flowM3PerS?: number;
  /** Capacity that it asks for, kg/day. */
  readonly capacityKgPerDay?: number;
  /** Water it would remove from the air to be held, kg/day; negative where it wets. Absent where the air is unknown. */
  readonly removesKgPerDay?: number;
  /** Whether that covers the load; absent where it is not known. */
  readonly coversLoad?: boolean;
  readonly warnings: readonly Notice[];
}

/** Water that air of another humidity takes out of the space, kg/day. */
function removed(comparison: CodeComparison, flowM3PerS: number, air: OptionAir): number {
  const share = air.share ?? 1;
  return (
    86_400 *
    standardAirKgPerM3(comparison.pressurePa) *
    flowM3PerS *
    share *
    (comparison.humidityRatio - air.humidityRatio)
  );
}

const ONE_OPTION: Notice = {
  code: 'name-the-option',
  message:
    'The code asks for one of the options: write down which one the design relies on. The adopted code governs.',
};

function airOption(
  key: 'exhaust' | 'supply',
  title: string,
  comparison: CodeComparison,
  air: OptionAir | undefined,
  warnings: readonly Notice[],
): CodeOption {
  const flowM3PerS = comparison.floorAreaM2 * AIR_M3_PER_S_M2;
  const removes = air ? removed(comparison, flowM3PerS, air) : undefined;
  return {
    key,
    title,
    flowM3PerS,
    ...(removes !== undefined && {
      removesKgPerDay: removes,
      coversLoad: removes >= comparison.loadKgPerDay,
    }),
    warnings: [
      ...warnings,
      ...(removes !== undefined && removes < 0
        ? [
            {
              code: 'air-wets',
              message: `This air is moister than the air to be held: it would bring ${(-removes).toFixed(1)} kg/day.`,
            },
          ]
        : []),
      ONE_OPTION,
    ],
  };
}

/** Labels that satisfy the sentence of the code though the machine does not hold the load, and the reverse. */
function dehumidifierOption(comparison: CodeComparison): CodeOption {
  const asked = comparison.floorAreaM2 * WATER_KG_PER_DAY_M2;
  const { temperatureC, relativeHumidity, loadKgPerDay } = comparison;
  const here = asked * relativeCapacity(temperatureC, relativeHumidity);
  const asOld = convertCapacity(asked, '80F-60', '65F-60');
  return {
    key: 'dehumidifier',
    title: 'Dehumidifier of 70 pints/day per 1000 ft²',
    capacityKgPerDay: asked,
    removesKgPerDay: Math.min(here, loadKgPerDay),
    coversLoad: here >= loadKgPerDay,
    warnings: [
      {
        code: 'no-test-condition',
        message:
          `The code names no test air for its 70 pints. Read at 80 °F/60 % the ${asked.toFixed(1)} kg/day asked here are ` +
          `${asOld.toFixed(1)} kg/day on a label at 65 °F/60 %; read at 65 °F/60 % the machine must be half again as large.`,
      },
      {
        code: 'crawl-is-cooler-than-the-test',
        message:
          `At ${temperatureC.toFixed(1)} °C and ${(100 * relativeHumidity).toFixed(0)} % a machine of that label at 80 °F removes ` +
          `${here.toFixed(1)} kg/day running all the time.`,
      },
      {
        code: 'area-is-not-load',
        message:
          'The rule goes by floor area; the load goes by leaks and bare ground. Size by the load, and check this as a floor.',
      },
      ONE_OPTION,
    ],
  };
}

/**
 * The options of the residential code for a closed crawl space, side by side with the load: exhaust fan, conditioned
 * supply, plenum, dehumidifier. The ground liner and the closing of vents come first in every one of them.
 *
 * Source: IRC R408.3 item 2: 1 cfm per 50 ft² for exhaust or supply (seen in quotation); 70 pints/day per 1000 ft² for
 * dehumidification, from the 2018 edition on (from memory).
 * @throws EngineError `not-finite` or `out-of-range` naming the input
 */
export function codeAlternatives(comparison: CodeComparison): readonly CodeOption[] {
  requireRange('floor area in m²', comparison.floorAreaM2, 0.1, 100_000);
  requireRange('temperature to hold in °C', comparison.temperatureC, -40, 50);
  requireRange('relative humidity to hold as a fraction', comparison.relativeHumidity, 0.01, 1);
  requireRange('humidity ratio to hold in kg/kg', comparison.humidityRatio, 0, 0.1);
  requireRange('pressure in Pa', comparison.pressurePa, 50_000, 110_000);
  requireRange('load in kg/day', comparison.loadKgPerDay, 0, 10_000);
  return [
    airOption(
      'exhaust',
      'Continuous exhaust, 1 cfm per 50 ft²',
      comparison,
      comparison.houseAir,
      EXHAUST_WARNINGS,
    ),
    airOption(
      'supply',
      'Conditioned supply, 1 cfm per 50 ft²',
      comparison,
      comparison.supplyAir,
      SUPPLY_WARNINGS,
    ),
    {
      key: 'plenum',
      title: 'Space used as a plenum',
      warnings: [
        {
          code: 'existing-structures-only',
          message:
            'Only for structures that already use the space as a plenum; mechanical code M1601.5 applies.',
        },
        ONE_OPTION,
      ],
    },
    dehumidifierOption(comparison),
  ];
}

const WALL_INSULATION: Notice = {
  code: 'wall-insulation',
  message:
    'With exhaust or supply the perimeter walls must be insulated as the energy section asks for the climate zone.',
};

const EXHAUST_WARNINGS: readonly Notice[] = [
  {
    code: 'path-from-house',
    message:
      'Needs a duct or transfer grille from the house: the fan dries with house air. Outdoor air that leaks in instead wets the space in summer.',
  },
  WALL_INSULATION,
  {
    code: 'combustion-and-soil-gas',
    message:
      'The fan lowers the pressure of the space: check vented fuel-burning appliances for backdrafting and test for radon; ' +
      'a licensed trade has the last word.',
  },
  {
    code: 'older-ratio',
    message: 'A change text of 2003 had 1 cfm per 20 ft²; check the edition that is adopted.',
  },
];

const SUPPLY_WARNINGS: readonly Notice[] = [
  { code: 'return-path', message: 'Needs a return path for the air to the house.' },
  WALL_INSULATION,
  {
    code: 'runs-with-the-system',
    message:
      'Delivers only while heating or cooling runs: in mild, humid weeks nothing dries. Log its hours of flow (common practice).',
  },
];
