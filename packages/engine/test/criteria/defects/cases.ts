import type { Evidence, JobFacts } from '../../../src/criteria/index.ts';

type Value = number | boolean;
/** A sample: quantity, value, and the item of the plan where it matters. */
export type Taken = readonly [quantity: string, value: Value, item?: string];

/** What shows a defect, what refutes it, and where the threshold between them is published. */
export interface DefectCase {
  readonly facts?: JobFacts;
  readonly shown: { readonly taken?: readonly Taken[]; readonly facts?: JobFacts };
  readonly refuted: { readonly taken?: readonly Taken[]; readonly facts?: JobFacts };
  readonly source: string;
}

/** The same value so many times. */
const times = (count: number, quantity: string, value: Value): Taken[] =>
  Array.from({ length: count }, () => [quantity, value]);

/** Samples with ids of their own. */
export function evidenceOf(taken: readonly Taken[] = []): Evidence[] {
  return taken.map(([quantity, value, item], i) => ({
    id: `s${i + 1}`,
    quantity,
    value,
    ...(item === undefined ? {} : { item }),
  }));
}

const PRACTICE = 'common practice, no source';
const closed: JobFacts = { spaceType: 'closed' };
const lined: JobFacts = { spaceType: 'closed', linerPresent: true, radonSystem: false, linerClass: 'none' };
const sump: JobFacts = { sumpPresent: true, plumbingCode: 'irc', freezingWinters: false };
const drain: JobFacts = { drainPresent: true, drainSide: 'interior' };
const machine: JobFacts = { spaceType: 'closed', dehumidifierPresent: true };
const INCH = 0.0254;

/** One row for each defect of the catalogue: values just beyond a threshold and just short of it. */
export const defectCases: Readonly<Record<string, DefectCase>> = {
  'access-door-leaks': {
    facts: closed,
    shown: { taken: [['accessDoorSealed', false]] },
    refuted: { taken: [['accessDoorSealed', true]] },
    source: 'Designing Closed Crawl Spaces: A Quick Reference',
  },
  'door-frame-edge-open': {
    facts: lined,
    shown: { taken: [['linerDoorFrameSealed', false]] },
    refuted: { taken: [['linerDoorFrameSealed', true]] },
    source: PRACTICE,
  },
  'access-sill-too-low': {
    facts: { accessKind: 'wall-opening', areawayPresent: false },
    shown: { taken: [['accessSillAboveGradeM', 3.9 * INCH]] },
    refuted: { taken: [['accessSillAboveGradeM', 4 * INCH]] },
    source: 'Designing Closed Crawl Spaces: A Quick Reference: sill at least 4 in above grade',
  },
  'vent-loose-board': {
    shown: { taken: [['ventFillerLoose', true]] },
    refuted: { taken: [['ventFillerLoose', false]] },
    source: PRACTICE,
  },
  'vent-plug-wrong-foam': {
    facts: { foamPresent: true, foamEntryOnlyForService: true },
    shown: { taken: [['foamIgnitionBarrierFitted', false]] },
    refuted: {
      taken: [
        ['foamIgnitionBarrierFitted', true],
        ['ventPanelShortOfR', false],
      ],
    },
    source: 'IRC R316.5.4',
  },
  'foam-hides-termites': {
    facts: { foamPresent: true, termiteZone: 'moderate' },
    shown: { taken: [['termiteStripM', 2.9 * INCH]] },
    refuted: { taken: [['termiteStripM', 3.1 * INCH]] },
    source: 'North Carolina R409 (2018): 3 to 4 in',
  },
  'flood-opening-sealed': {
    facts: { floodZone: true },
    shown: { taken: [['floodOpeningAreaRatio', 0.0069]] },
    refuted: { taken: [['floodOpeningAreaRatio', 0.007]] },
    source: 'NFIP: 1 in² of opening per ft² of floor (1/144 = 0.00694)',
  },
  'half-vented': {
    facts: machine,
    shown: { taken: [['ventsOpen', true]] },
    refuted: { taken: [['ventsOpen', false]] },
    source: 'IRC R408.2 against R408.3',
  },
  'rim-and-floor-leaks': {
    shown: { taken: [['rimAndFloorHolesM2', 0.004]] },
    refuted: { taken: [['rimAndFloorHolesM2', 0]] },
    source: PRACTICE,
  },
  'open-to-neighbor-cell': {
    facts: closed,
    shown: { taken: [['spaceSealedFromNeighbors', false]] },
    refuted: { taken: [['spaceSealedFromNeighbors', true]] },
    source: 'North Carolina R409 (2018)',
  },
  'path-obstructed': {
    facts: { applianceInSpace: true, passageStandingHeight: false },
    shown: { taken: [['passageHeightM', 29 * INCH]] },
    refuted: {
      taken: [
        ['passageHeightM', 30 * INCH],
        ['passageWidthM', 22 * INCH],
        ['passageLengthM', 6],
      ],
    },
    source: 'IRC M1305.1.4 (2006): 30 in high, 22 in wide, 20 ft long',
  },
  rodents: {
    shown: { facts: { rodentSigns: true } },
    refuted: { facts: { rodentSigns: false } },
    source: 'answer of the surveyor',
  },
  'seams-under-lapped': {
    facts: lined,
    shown: { taken: [['seamLapWidthM', 5.9 * INCH]] },
    refuted: { taken: times(5, 'seamLapWidthM', 12 * INCH) },
    source: 'IRC R408.3: 6 in; DOE SWS 2017 2.0403.1: 12 in',
  },
  'seams-not-sealed': {
    facts: lined,
    shown: { taken: [['seamsSealed', false]] },
    refuted: { taken: [['seamsSealed', true]] },
    source: 'IRC R408.3',
  },
  'glued-edge-letting-go': {
    facts: lined,
    shown: { taken: [['linerEdgeAttached', false]] },
    refuted: { taken: [['linerEdgeAttached', true]] },
    source: 'IRC R408.3',
  },
  'wall-edge-at-wrong-height': {
    facts: { ...lined, linerOnWalls: false, hollowMasonry: false },
    shown: { taken: [['linerEdgeHeightM', 5.9 * INCH]] },
    refuted: { taken: times(4, 'linerEdgeHeightM', 6.1 * INCH) },
    source: 'IRC R408.3: 6 in up the wall',
  },
  'bare-strip-under-ducts': {
    facts: { ...lined, ductsInSpace: true },
    shown: { taken: [['linerContinuousUnderDucts', false]] },
    refuted: { taken: [['linerContinuousUnderDucts', true]] },
    source: 'IRC R408.3: exposed earth covered',
  },
  'piers-not-wrapped': {
    facts: { ...lined, piersPresent: true, hollowPiers: false },
    shown: { taken: [['pierWrapHeightM', 5.9 * INCH]] },
    refuted: {
      taken: [
        ['pierWrapHeightM', 6 * INCH],
        ['pierWrapSealed', true],
      ],
    },
    source: 'Wyoming weatherization field guide: 6 in up the pier',
  },
  'exposed-earth': {
    facts: { ...lined, floorSurface: 'earth' },
    shown: { taken: [['exposedEarthFraction', 0.001]] },
    refuted: { taken: [['exposedEarthFraction', 0]] },
    source: 'IRC R408.3: all of the exposed earth covered',
  },
  'liner-torn-or-thin': {
    facts: { ...lined, linerCrossLaminated: false, linerTrafficked: false },
    shown: { taken: [['linerThicknessM', 0.00014]] },
    refuted: {
      taken: [
        ['linerThicknessM', 0.00016],
        ['linerHoleCount', 0],
        ['linerPermeanceNg', 5],
      ],
    },
    source: 'Wyoming weatherization field guide: 6 mil (0.1524 mm)',
  },
  'penetrations-open': {
    facts: lined,
    shown: { taken: [['penetrationsSealed', false]] },
    refuted: { taken: [['penetrationsSealed', true]] },
    source: 'ANSI/AARST RMS-LB-2018 6.1.3.1',
  },
  'damp-under-liner': {
    facts: lined,
    shown: { taken: [['dropletsUnderLiner', true]] },
    refuted: { taken: [['dropletsUnderLiner', false]] },
    source: PRACTICE,
  },
  'liner-loose-or-staked': {
    facts: lined,
    shown: { taken: [['stakesThroughLiner', true]] },
    refuted: {
      taken: [
        ['stakesThroughLiner', false],
        ['linerFoldHeightM', 1.9 * INCH],
      ],
    },
    source: 'Wyoming weatherization field guide: no stakes; folds over 2 in by common practice',
  },
  'lap-against-flow': {
    facts: { ...lined, floorInletPresent: true },
    shown: { taken: [['lapShedsTowardInlet', false]] },
    refuted: { taken: [['lapShedsTowardInlet', true]] },
    source: PRACTICE,
  },
  'old-liner-below': {
    facts: lined,
    shown: { taken: [['oldLinerLeft', true]] },
    refuted: { taken: [['oldLinerLeft', false]] },
    source: PRACTICE,
  },
  'smell-from-liner': {
    facts: lined,
    shown: { taken: [['linerScrimWet', true]] },
    refuted: { taken: [['linerScrimWet', false]] },
    source: PRACTICE,
  },
  'standing-water': {
    shown: { taken: [['standingWaterDepthM', 0.002]] },
    refuted: { taken: [['standingWaterDepthM', 0]] },
    source: PRACTICE,
  },
  'water-bed': {
    facts: lined,
    shown: { taken: [['freeWaterUnderLinerM', 0.14 * INCH]] },
    refuted: { taken: [['freeWaterUnderLinerM', 0.125 * INCH]] },
    source: PRACTICE,
  },
  'water-on-liner': {
    facts: lined,
    shown: { taken: [['linerPondingTimeH', 25]] },
    refuted: { taken: [['waterLyingOnLiner', false]] },
    source: PRACTICE,
  },
  'outside-water-let-in': {
    facts: { pavingAtWall: false, expansiveSoil: true },
    shown: { taken: [['outsideGradeFallRatio', 0.049]] },
    refuted: {
      taken: [...times(4, 'outsideGradeFallRatio', 0.05), ...times(4, 'roofWaterDischargeM', 1.6)],
    },
    source: 'IRC R401.3: 6 in of fall in 10 ft; R801.3: 5 ft',
  },
  'damp-walls': {
    shown: { taken: [['wallDamp', true]] },
    refuted: { taken: [['wallDamp', false]] },
    source: PRACTICE,
  },
  'water-let-in-from-plumbing-or-dryer': {
    shown: { taken: [['exhaustEndsInCrawl', true]] },
    refuted: {
      taken: [
        ['exhaustEndsInCrawl', false],
        ['plumbingLeakPresent', false],
      ],
    },
    source: 'DOE SWS 6.0101.2c',
  },
  'debris-left': {
    shown: { taken: [['organicDebrisPresent', true]] },
    refuted: { taken: [['organicDebrisPresent', false]] },
    source: 'IRC R408.5',
  },
  'smell-from-organics': {
    facts: lined,
    shown: { taken: [['organicsUnderLiner', true]] },
    refuted: { taken: [['organicsUnderLiner', false]] },
    source: PRACTICE,
  },
  'sump-lid-loose': {
    facts: sump,
    shown: { taken: [['sumpLidSealed', false]] },
    refuted: { taken: [['sumpLidSealed', true]] },
    source: 'IRC 2018 AF103.4.4',
  },
  'sump-lid-holes-open': {
    facts: sump,
    shown: { taken: [['sumpLidPenetrationsSealed', false]] },
    refuted: { taken: [['sumpLidPenetrationsSealed', true]] },
    source: 'ANSI/AARST CCAH-2020 404.1.1',
  },
  'basin-rim-proud': {
    facts: sump,
    shown: { taken: [['floorInletRimAboveLinerM', 0.5 * INCH]] },
    refuted: { taken: [['floorInletRimAboveLinerM', 0]] },
    source: PRACTICE,
  },
  'basin-too-small': {
    facts: sump,
    shown: { taken: [['sumpDiameterM', 17.9 * INCH]] },
    refuted: {
      taken: [
        ['sumpDiameterM', 18 * INCH],
        ['sumpDepthM', 24 * INCH],
      ],
    },
    source: 'IRC 2021 P3303.1.2: 18 in by 24 in',
  },
  'pump-or-discharge-faulty': {
    facts: sump,
    shown: { taken: [['dischargeDistanceM', 1.5]] },
    refuted: {
      taken: [
        ['dischargeCheckValve', true],
        ['dischargeDistanceM', 1.53],
        ['pumpCapacityRatio', 1.5],
      ],
    },
    source: 'IRC R801.3: 5 ft (1.524 m); the rest common practice',
  },
  'no-alarm-or-back-up': {
    facts: sump,
    shown: { taken: [['backupRunTimeH', 7.9]] },
    refuted: {
      taken: [
        ['backupRunTimeH', 8],
        ['highWaterAlarm', true],
      ],
    },
    source: PRACTICE,
  },
  'drain-on-grade': {
    facts: drain,
    shown: { taken: [['drainInvertBelowFloorM', 3.9 * INCH]] },
    refuted: { taken: times(2, 'drainInvertBelowFloorM', 4 * INCH) },
    source: 'IRC R405.1, at or below the area protected; 4 in by common practice',
  },
  'drain-falls-wrong': {
    facts: drain,
    shown: { taken: [['drainFallSlope', 0.01]] },
    refuted: { taken: [['drainFallSlope', 0.0105]] },
    source: 'common practice: 1/8 in per ft (1.04 %)',
  },
  'drain-without-filter': {
    facts: drain,
    shown: { taken: [['drainFilterPresent', false]] },
    refuted: { taken: [['drainFilterPresent', true]] },
    source: 'IRC R405.1',
  },
  'drain-without-stone': {
    facts: drain,
    shown: { taken: [['stoneBelowPipeM', 1.9 * INCH]] },
    refuted: {
      taken: [
        ['stoneBelowPipeM', 2 * INCH],
        ['stoneAbovePipeM', 6 * INCH],
      ],
    },
    source: 'IRC R405.1: 2 in below, 6 in above',
  },
  'drain-silted': {
    facts: drain,
    shown: { taken: [['drainBlockedFraction', 0.11]] },
    refuted: { taken: [['drainBlockedFraction', 0.09]] },
    source: PRACTICE,
  },
  'drain-disconnected': {
    facts: drain,
    shown: { taken: [['drainEntersBasin', false]] },
    refuted: { taken: [['drainJointsCoupled', true]] },
    source: PRACTICE,
  },
  'dehumidifier-facing-wall': {
    facts: machine,
    shown: { taken: [['dehumidifierFaceClearanceM', 0.9]] },
    refuted: {
      taken: [
        ['dehumidifierFaceClearanceM', 0.92],
        ['dehumidifierFreeRunM', 3.05],
      ],
    },
    source: 'common practice: 3 ft clear, 10 ft of free run',
  },
  'dehumidifier-too-small': {
    facts: { ...machine, dryingOption: 'exhaust' },
    shown: {
      taken: [
        ['dehumidifierRunShare', 0.91],
        ['airRelativeHumidityMean7Day', 0.61],
      ],
    },
    refuted: { taken: [['dehumidifierRunShare', 0.89]] },
    source: 'EPA mold course ch. 2: below 60 %; nine tenths of a week by common practice',
  },
  'dehumidifier-out-of-reach': {
    facts: { ...machine, applianceInSpace: false },
    shown: { taken: [['dehumidifierServiceSideM', 29 * INCH]] },
    refuted: {
      taken: [
        ['dehumidifierServiceSideM', 30 * INCH],
        ['filterServiceAgeMonths', 6],
      ],
    },
    source: 'IRC M1305.1.4 (2006): 30 in level service space',
  },
  'condensate-pump-loose': {
    facts: { condensatePump: true },
    shown: { taken: [['condensatePumpAboveLinerM', 2.9 * INCH]] },
    refuted: {
      taken: [
        ['condensatePumpFixed', true],
        ['condensatePumpCutout', true],
      ],
    },
    source: 'IRC 2018 M1411.4; 3 in by common practice',
  },
  'condensate-line-fouled': {
    facts: { condensateLine: true },
    shown: { taken: [['condensateLineSlope', 0.01]] },
    refuted: {
      taken: [
        ['condensateLineSlope', 0.0105],
        ['condensateServiceAgeMonths', 6],
      ],
    },
    source: 'IMC 307.2.1: 1/8 unit in 12',
  },
  'soil-gas-exhaust-missing': {
    facts: { radonSystem: true },
    shown: { taken: [['radonBqPerM3', 148]] },
    refuted: {
      taken: [
        ['radonBqPerM3', 147],
        ['filmPressureDifferencePa', -1],
      ],
    },
    source: 'EPA action level: 4 pCi/L (148 Bq/m³)',
  },
  'exhaust-in-wrong-place': {
    facts: { radonSystem: true },
    shown: { taken: [['radonFanWhereLeakStaysOut', false]] },
    refuted: { taken: [['radonFanWhereLeakStaysOut', true]] },
    source: 'ANSI/AARST SGM-SF-2017 6.5',
  },
  'dead-zones': {
    shown: { taken: [['humiditySpread', 0.11]] },
    refuted: { taken: [['humiditySpread', 0.1]] },
    source: 'common practice: 10 points',
  },
  'humidistat-off': {
    facts: machine,
    shown: { taken: [['humidistatSetting', 0.35]] },
    refuted: {
      taken: [
        ['humidistatSetting', 0.5],
        ['humidistatError', 0.05],
      ],
    },
    source: PRACTICE,
  },
  'sweating-ducts': {
    facts: { ductsInSpace: true },
    shown: { taken: [['ductSkinAboveDewPointK', -0.1]] },
    refuted: {
      taken: [
        ['ductSkinAboveDewPointK', 0.1],
        ['ductLeaksAir', false],
      ],
    },
    source: 'meaning of the dew point',
  },
  untended: {
    facts: machine,
    shown: { taken: [['filterServiceAgeMonths', 25]] },
    refuted: { taken: [['filterServiceAgeMonths', 24]] },
    source: PRACTICE,
  },
  'wood-in-watch-band': {
    shown: { taken: [['woodMoistureContent', 0.17]] },
    refuted: { taken: times(3, 'woodMoistureContent', 0.159) },
    source: 'common practice: 16 to 19 %',
  },
  'wet-wood': {
    shown: { taken: [['woodMoistureContent', 0.2]] },
    refuted: { taken: times(3, 'woodMoistureContent', 0.199) },
    source: 'South Carolina form CL-100: 20 %',
  },
  'visible-mold': {
    shown: { taken: [['moldGrowthPresent', true]] },
    refuted: { taken: [['moldGrowthPresent', false]] },
    source: 'ANSI/IICRC S520, condition 3',
  },
  'water-conducting-rot': {
    shown: { taken: [['waterConductingRotSigns', true]] },
    refuted: { taken: [['waterConductingRotSigns', false]] },
    source: 'USFS Southern Forest Experiment Station Occasional Paper 133 (1954)',
  },
  'wood-near-earth': {
    facts: { untreatedFraming: true, untreatedPosts: false, girderPockets: false, pavingAtWall: false },
    shown: { taken: [['joistClearanceM', 17.9 * INCH]] },
    refuted: {
      taken: [
        ['joistClearanceM', 18 * INCH],
        ['girderClearanceM', 12 * INCH],
        ['sillAboveEarthM', 8 * INCH],
      ],
    },
    source: 'IRC R317.1: 18 in joists, 12 in girders, 8 in sills',
  },
  'termite-signs': {
    shown: { taken: [['termiteOrBeetleSigns', true]] },
    refuted: { taken: [['termiteOrBeetleSigns', false]] },
    source: 'what is seen',
  },
  'mold-cleaned-not-verified': {
    facts: { moldWorkUnderWay: true },
    shown: { taken: [['woodMoistureAtClearance', 0.16]] },
    refuted: {
      taken: [...times(3, 'woodMoistureAtClearance', 0.159), ['moldClearanceSeen', true]],
    },
    source: 'common practice: below 16 %',
  },
  'wet-floor-batts': {
    facts: { floorBattsPresent: true, exposedFacings: false },
    shown: { taken: [['wetBattsPresent', true]] },
    refuted: { taken: [['wetBattsPresent', false]] },
    source: PRACTICE,
  },
  'crawl-walls-not-insulated': {
    facts: { ...closed, dryingOption: 'supply', crawlWallInsulation: 'none' },
    shown: { taken: [['crawlWallInsulated', false]] },
    refuted: { taken: [['crawlWallInsulated', true]] },
    source: 'IRC R408.3, N1102.2',
  },
  'gas-appliance-sealed-in': {
    facts: { ...closed, combustionAppliance: true, combustionAirFromIndoors: true },
    shown: { taken: [['combustionAirVolumeM3PerKw', 4.8]] },
    refuted: {
      taken: [
        ['combustionAirVolumeM3PerKw', 4.9],
        ['spillageTestPassed', true],
      ],
    },
    source: 'IFGC 304.5: 50 ft³ per 1000 Btu/h (4.83 m³/kW)',
  },
  'supports-unsound': {
    shown: { facts: { supportsDoubtful: true } },
    refuted: { facts: { supportsDoubtful: false } },
    source: 'answer of the surveyor',
  },
  'no-light-wrong-power': {
    shown: { taken: [['gfciProtected', false]] },
    refuted: {
      taken: [
        ['gfciProtected', true],
        ['flexibleCordAsWiring', false],
      ],
    },
    source: 'NEC 210.8(A)(4), 400.12',
  },
  'bad-air': {
    shown: { taken: [['oxygenFraction', 0.194]] },
    refuted: {
      taken: [
        ['oxygenFraction', 0.205],
        ['flammableGasLelFraction', 0.01],
        ['carbonMonoxidePpm', 2],
        ['hydrogenSulfidePpm', 0],
      ],
    },
    source: '29 CFR 1926.1202 and NIOSH limits: 19.5 % oxygen',
  },
  'papers-missing': {
    shown: { taken: [['handoverFileComplete', false]] },
    refuted: { taken: [['handoverFileComplete', true]] },
    source: PRACTICE,
  },
  'radon-not-retested': {
    facts: closed,
    shown: { taken: [['radonTestedSinceWork', false]] },
    refuted: { taken: [['radonTestedSinceWork', true]] },
    source: 'EPA 402-K-10-005',
  },
};
