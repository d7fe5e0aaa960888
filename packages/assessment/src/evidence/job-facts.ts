import { criteria } from '@undercroft/engine';
import type { SurveyedJob } from '@undercroft/record';

type Facts = { -readonly [K in keyof criteria.JobFacts]: criteria.JobFacts[K] };

/** A yes where at least one is seen; an empty list of a finished survey is taken as unknown, not as "none". */
const seenAny = (count: number): true | undefined => (count > 0 ? true : undefined);

function yesIfAll(values: readonly (boolean | undefined)[]): boolean | undefined {
  if (values.length === 0 || values.some((v) => v === undefined)) return undefined;
  return values.every((v) => v === true);
}

/** Facts that the drawing of the space settles. */
function factsOfPlan(job: SurveyedJob): Facts {
  const { plan, house } = job;
  const of = (kind: SurveyedJob['plan']['equipment'][number]['kind']) =>
    plan.equipment.filter((e) => e.kind === kind);
  const covers = [plan.ground.cover, ...plan.zones.map((z) => z.ground.cover)];
  const lined = covers.includes('liner');
  const permeance = plan.ground.liner?.permeanceKgPerM2SPa;
  const materials = plan.walls.map((w) => w.material).filter((m) => m !== undefined);
  const sumps = of('sump');
  const appliances = plan.equipment.filter((e) =>
    ['air-handler', 'furnace', 'boiler', 'water-heater'].includes(e.kind),
  );
  const electric = plan.equipment.length > 0 ? true : undefined;
  const dampWater = covers.length > 0 && [plan.ground, ...plan.zones.map((z) => z.ground)];
  return {
    linerPresent: lined,
    linerOnWalls: lined
      ? yesIfAll(plan.walls.map((w) => (w.linerHeightM === undefined ? undefined : w.linerHeightM >= 0.3)))
      : undefined,
    linerTrafficked: lined ? true : undefined,
    groundCoverClassI: lined
      ? permeance === undefined
        ? undefined
        : permeance <= CLASS_I_KG_PER_M2_S_PA && covers.every((c) => c === 'liner')
      : covers.every((c) => c === 'bare-earth' || c === 'gravel')
        ? false
        : undefined,
    oldLinerBeneath: plan.ground.liner?.oldLinerBelow,
    piersPresent: seenAny(plan.piers.length),
    hollowPiers: seenAny(plan.piers.filter((p) => p.material === 'hollow-block').length),
    hollowMasonry: seenAny(materials.filter((m) => ['hollow-block', 'brick', 'stone'].includes(m)).length),
    floorSurface: plan.ground.cover === 'slab' ? 'slab' : plan.ground.cover === 'gravel' ? 'gravel' : 'earth',
    dehumidifierPresent: of('dehumidifier').length > 0 || (house.spaceType === 'vented' ? false : undefined),
    sumpPresent: seenAny(sumps.length),
    sumpLidClosed: sumps.length > 0 ? sumps.every((s) => s.lid === 'sealed') : undefined,
    drainPresent: seenAny(plan.drains.length),
    drainSide: plan.drains.length > 0 ? 'interior' : undefined,
    drainToDaylight: plan.drains.some((d) => d.endsIn === 'daylight') || undefined,
    condensatePump: seenAny(of('condensate-pump').length),
    condensateLine: seenAny(of('condensate-pump').length),
    radonSystem: seenAny(of('soil-gas-fan').length),
    applianceInSpace: seenAny(appliances.length),
    combustionAppliance: plan.equipment.some((e) => e.burnsFuelWithRoomAir === true) || undefined,
    combustionAirFromIndoors: plan.equipment.some((e) => e.burnsFuelWithRoomAir === true) || undefined,
    ductsInSpace: seenAny(plan.ducts.length),
    electricityInSpace: electric,
    receptacleInSpace: electric,
    accessKind:
      plan.doors[0] === undefined
        ? undefined
        : plan.doors[0].kind === 'floor-hatch'
          ? 'floor-hatch'
          : 'wall-opening',
    standingWater:
      dampWater !== false && dampWater.some((g) => g.surface === 'standing-water') ? true : undefined,
    serviceOrStorage: electric,
  };
}

/** 0.1 perm in SI: the limit of a Class I vapor retarder (IRC R702.7, class bands as read; 1 perm = 57.2135 ng/(s·m²·Pa)). */
const CLASS_I_KG_PER_M2_S_PA = 5.72135e-12;

function factsOfHouse(job: SurveyedJob): Facts {
  const { house } = job;
  const zone = house.climateZone;
  const digit = zone?.[0] as Facts['climateZone'];
  return {
    spaceType: house.spaceType,
    floodZone: house.floodZone,
    termiteZone: house.termiteZone,
    climateZone: digit,
    marineZone: zone === undefined ? undefined : zone.endsWith('C'),
    warmHumidZone:
      zone === undefined
        ? undefined
        : zone === '1A' || zone === '2A'
          ? true
          : zone === '3A'
            ? undefined
            : false,
    freezingWinters: digit === undefined ? undefined : Number(digit) >= 4 ? true : undefined,
    builtBefore1978: house.yearBuilt === undefined ? undefined : house.yearBuilt < 1978,
    freeDrainingSoil: house.soil === 'sand' ? true : undefined,
  };
}

/** Facts that follow from what was observed. */
function factsOfObservations(job: SurveyedJob): Facts {
  const yes = (quantity: string) =>
    job.readings.observations.some((o) => o.quantity === quantity && o.value === true) || undefined;
  return {
    moldPresent: yes('moldGrowthPresent'),
    rotPresent: yes('waterConductingRotSigns'),
    linerSeamsSealed: job.readings.observations.find((o) => o.quantity === 'seamsSealed')?.value as
      | boolean
      | undefined,
  };
}

/** Answers that the surveyor gave by name; one that the engine does not know, or whose value it does not allow, is reported. */
function factsOfAnswers(job: SurveyedJob, unknown: (question: string) => void): Facts {
  const facts: Record<string, unknown> = {};
  for (const { question, answer } of job.readings.answers) {
    if (question in criteria.facts && criteria.isFactValue(question as criteria.FactKey, answer))
      facts[question] = answer;
    else unknown(question);
  }
  return facts as Facts;
}

/**
 * What is known about a job for deciding which criteria apply. What a person answered outright wins over what the drawing
 * implies. A fact that nothing settles stays unknown.
 */
export function jobFacts(job: SurveyedJob, unknownAnswer: (question: string) => void): criteria.JobFacts {
  const layers = [
    factsOfPlan(job),
    factsOfHouse(job),
    factsOfObservations(job),
    factsOfAnswers(job, unknownAnswer),
  ];
  const known: Record<string, unknown> = {};
  for (const layer of layers) {
    for (const [key, value] of Object.entries(layer)) if (value !== undefined) known[key] = value;
  }
  return known as criteria.JobFacts;
}
