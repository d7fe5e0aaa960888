import { EngineError } from '../numerics/engine-error.ts';
import type { Notice } from '../numerics/notice.ts';
import { requireRange } from '../numerics/require-range.ts';
import { depressurizationPa, draftLimitPa } from './depressurization.ts';
import type { FlowLaw } from './opening.ts';

/** How an appliance gets its air and sheds its gases. */
export type Draft = 'natural' | 'fan-assisted' | 'direct-vent';

/** A fuel-burning appliance that shares air with the space under question. */
export interface CombustionAppliance {
  readonly name: string;
  readonly inputKW: number;
  /** `direct-vent`: takes its air from outdoors by its own sealed pipe. */
  readonly draft: Draft;
}

/** What is known of a space that holds, or gives air to, fuel-burning appliances. */
export interface CombustionSpace {
  readonly appliances: readonly CombustionAppliance[];
  /** Volume that the appliances may draw on, with rooms that open to it for good, m3. */
  readonly volumeM3: number;
  /** Measured or estimated outdoor air, air changes per hour, 0 to 100. */
  readonly outdoorAirChangesPerHour?: number;
  /** All exhaust fans that can run at once, less supply, m3/s, and the leakage the space draws through. */
  readonly netExhaustM3PerS?: number;
  readonly leakage?: FlowLaw;
  /** Whether vents are to be shut or the space to be sealed. */
  readonly closingVents: boolean;
  /** Whether a vent or floor grille was put in to feed an appliance: `unknown` until someone looked. */
  readonly ventsFeedAppliance: 'yes' | 'no' | 'unknown';
}

/** Cautions and figures. No outcome of it says that a space is safe. */
export interface CombustionCaution {
  readonly volume: {
    /** `not-needed`: every appliance brings its own outdoor air. */
    readonly answer: 'met' | 'not-met' | 'not-shown' | 'not-needed';
    readonly method: 'volume' | 'leakage-rate';
    /** Null when no volume would do, for want of any outdoor air. */
    readonly requiredM3: number | null;
    readonly availableM3: number;
    /** Total input of the appliances that draw on the space, kW. */
    readonly inputKW: number;
  };
  /** Suction by the fans, Pa; null when fans or leakage are not known. */
  readonly depressurizationPa: number | null;
  /** Smallest suction at which an appliance here may spill, Pa; null when none draws on the space. */
  readonly draftLimitPa: number | null;
  readonly cautions: readonly Notice[];
}

/** 50 ft3 for each 1000 Btu/h of input, in m3/kW. Source: IFGC 304.5, quoted. */
const VOLUME_M3_PER_KW = 4.831;
/** 21 and 15 ft3 for each 1000 Btu/h, over the air changes per hour, in m3/kW. Source: IFGC 304.5.2, from memory. */
const LEAKAGE_RATE_NATURAL = 2.029;
const LEAKAGE_RATE_FAN = 1.449;
/** Below this many air changes per hour the plain volume rule may not be used. Source: IFGC 304.5, quoted. */
const VOLUME_RULE_ACH = 0.4;

function total(appliances: readonly CombustionAppliance[], ...drafts: Draft[]): number {
  return appliances.reduce((sum, one) => sum + (drafts.includes(one.draft) ? one.inputKW : 0), 0);
}

function judgeVolume(space: CombustionSpace): CombustionCaution['volume'] {
  const { appliances, volumeM3: availableM3, outdoorAirChangesPerHour: changes } = space;
  const natural = total(appliances, 'natural');
  const fan = total(appliances, 'fan-assisted');
  const inputKW = natural + fan;
  if (inputKW === 0) return { answer: 'not-needed', method: 'volume', requiredM3: 0, availableM3, inputKW };
  if (changes !== undefined && changes < VOLUME_RULE_ACH) {
    const perChange = LEAKAGE_RATE_NATURAL * natural + LEAKAGE_RATE_FAN * fan;
    const requiredM3 = changes > 0 ? perChange / changes : null;
    return {
      answer: requiredM3 !== null && availableM3 >= requiredM3 ? 'met' : 'not-met',
      method: 'leakage-rate',
      requiredM3,
      availableM3,
      inputKW,
    };
  }
  const requiredM3 = VOLUME_M3_PER_KW * inputKW;
  const enough = changes === undefined ? 'not-shown' : 'met';
  return {
    answer: availableM3 >= requiredM3 ? enough : 'not-met',
    method: 'volume',
    requiredM3,
    availableM3,
    inputKW,
  };
}

function volumeCaution(volume: CombustionCaution['volume']): Notice {
  const has = `${volume.availableM3.toFixed(0)} m3`;
  const needs = volume.requiredM3 === null ? 'more than any volume' : `${volume.requiredM3.toFixed(0)} m3`;
  if (volume.method === 'leakage-rate') {
    return {
      code: 'combustion-air-tight',
      message: `The space is tight, below ${VOLUME_RULE_ACH} air changes per hour, so the leakage-rate method counts: appliances of ${volume.inputKW.toFixed(1)} kW need ${needs}, and there are ${has}.`,
    };
  }
  const rule = `Appliances of ${volume.inputKW.toFixed(1)} kW that draw air here need ${needs} of indoor air (50 ft3 per 1000 Btu/h), and there are ${has}`;
  if (volume.answer === 'not-met') {
    return {
      code: 'combustion-air-short',
      message: `${rule}. Give them outdoor air by a duct, or change to direct vent, before the space is closed.`,
    };
  }
  if (volume.answer === 'met') return { code: 'combustion-air-volume', message: `${rule}.` };
  return {
    code: 'combustion-air-not-shown',
    message: `${rule}; but the rule holds only where the space is not tight, and its air change was not measured.`,
  };
}

function lowestLimit(appliances: readonly CombustionAppliance[]): number | null {
  if (appliances.some(({ draft }) => draft === 'natural')) return draftLimitPa.natural;
  return appliances.some(({ draft }) => draft === 'fan-assisted') ? draftLimitPa.fanAssisted : null;
}

function suctionCaution(suction: number | null, limit: number): Notice {
  if (suction === null) {
    return {
      code: 'suction-not-shown',
      message:
        'How far exhaust fans pull the space below outdoors was not worked out; fans or leakage are not known.',
    };
  }
  const figure = `Exhaust fans are estimated to pull the space ${suction.toFixed(1)} Pa below outdoors`;
  return suction > limit
    ? {
        code: 'suction-high',
        message: `${figure}, more than the ${limit} Pa at which an appliance here may spill its gases.`,
      }
    : {
        code: 'suction-estimate',
        message: `${figure}; an appliance here may spill its gases from about ${limit} Pa, and wind and open doors add to it.`,
      };
}

/**
 * What must be looked at before a space with fuel-burning appliances is closed: the volume rule of 50 ft3 of air per
 * 1000 Btu/h (4.83 m3/kW) or, below 0.40 air changes per hour, the leakage-rate method; an estimate of the suction by
 * fans against the draft of the appliances; and the steps that no figure replaces. No result says that a space is
 * safe.
 * Sources: IFGC 304.5 (quoted), its leakage-rate method and draft limits (from memory), PNNL brief on rooms with
 * fuel-burning appliances and ANSI/AARST SGM-SF 11.1.1 on testing (read).
 * @throws EngineError for inputs, volume or air changes that are negative or no numbers
 */
export function combustionCaution(space: CombustionSpace): CombustionCaution {
  for (const one of space.appliances) requireRange(`${one.name}: input, kW,`, one.inputKW, 0, 1000);
  requireRange('volume, m3,', space.volumeM3, 0, 1e6);
  if (space.outdoorAirChangesPerHour !== undefined) {
    requireRange('outdoor air changes per hour', space.outdoorAirChangesPerHour, 0, 100);
  }
  if (space.leakage !== undefined && space.leakage.coefficient === 0) {
    throw new EngineError(
      'bad-input',
      'a space without leakage cannot be drawn on; leave the leakage out if unknown',
    );
  }
  const volume = judgeVolume(space);
  const limit = lowestLimit(space.appliances);
  const suction =
    space.netExhaustM3PerS === undefined || space.leakage === undefined
      ? null
      : depressurizationPa(space.netExhaustM3PerS, space.leakage);
  const cautions: Notice[] = [];
  if (limit !== null) {
    cautions.push(volumeCaution(volume), suctionCaution(suction, limit), {
      code: 'spillage-test',
      message:
        'A qualified technician must test every vented appliance for spillage, with all fans on and inside doors both open and shut, before and after the work; until it has passed, shut no vents. These figures do not replace the test.',
    });
  }
  if (space.appliances.length > 0) {
    cautions.push({
      code: 'carbon-monoxide-alarm',
      message:
        'Carbon monoxide alarms must be working in the house. Local code and a licensed gas or mechanical contractor decide.',
    });
  }
  if (space.closingVents && space.ventsFeedAppliance !== 'no') {
    cautions.push({
      code: 'vents-feed-appliance',
      message:
        space.ventsFeedAppliance === 'yes'
          ? 'Vents of this crawl space feed an appliance with air; do not shut them until it has outdoor air of its own.'
          : 'Some houses feed an appliance with crawl air through a grille in the floor; look for one before any vent is shut.',
    });
  }
  return { volume, depressurizationPa: suction, draftLimitPa: limit, cautions };
}
