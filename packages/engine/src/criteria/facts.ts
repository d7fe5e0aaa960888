/** A fact about the job that decides which criteria and cautions apply. */
interface Fact {
  /** Question for the person who knows, in plain words. */
  readonly question: string;
  /** Allowed answers; `yes-no` stands for true and false. */
  readonly values: 'yes-no' | readonly string[];
}

const yesNo = <const Q extends string>(question: Q) => ({ question, values: 'yes-no' }) as const;
const oneOf = <const V extends readonly string[]>(question: string, values: V) => ({ question, values });

/** Every fact that a condition may name. An absent fact is unknown, never "no". */
export const facts = {
  spaceType: oneOf('Is the space meant to be vented to outdoors, or closed?', ['vented', 'closed']),
  crossVentilated: yesNo('Do the vents let air cross the space?'),
  groundCoverClassI: yesNo('Is the whole ground covered with a Class I vapor retarder (0.1 perm or less)?'),
  ventCover: oneOf('What covers the vents?', [
    'perforated-plate',
    'expanded-plate',
    'hardware-cloth',
    'wire-mesh',
    'grille-or-brick',
  ]),
  linerPresent: yesNo('Is there a ground liner?'),
  linerOnWalls: yesNo('Does the liner go up the walls to near the sill?'),
  linerSeamsSealed: yesNo('Are the seams of the liner taped or sealed?'),
  linerClass: oneOf('Which tested class of under-slab vapor retarder is the liner said to be?', [
    'none',
    'A',
    'B',
    'C',
  ]),
  linerCrossLaminated: yesNo('Is the liner a cross-laminated sheet?'),
  linerTrafficked: yesNo('Will people crawl on the liner or store things on it?'),
  linerPatched: yesNo('Has the liner patched tears?'),
  oldLinerBeneath: yesNo('Does an older sheet lie under the liner?'),
  floorInletPresent: yesNo('Does the lined floor have a drained inlet?'),
  timberBattens: yesNo('Is the liner edge held by wood strips on the wall?'),
  hollowMasonry: yesNo('Are the walls hollow block, rubble or brick?'),
  piersPresent: yesNo('Are there piers in the space?'),
  hollowPiers: yesNo('Are the piers hollow block?'),
  floorSurface: oneOf('What is the floor of the space?', ['earth', 'gravel', 'slab']),
  dryingOption: oneOf('Which way of drying does the closed space rely on?', [
    'exhaust',
    'supply',
    'plenum',
    'dehumidifier',
  ]),
  dehumidifierPresent: yesNo('Is there a dehumidifier?'),
  dehumidifierClass: oneOf('What kind of dehumidifier is it, by label?', [
    'portable-to-25-pints',
    'portable-to-50-pints',
    'portable-over-50-pints',
    'ducted-to-8-ft3',
    'ducted-over-8-ft3',
  ]),
  floorBattsPresent: yesNo('Are there batts between the floor joists?'),
  crawlWallInsulation: oneOf('How are the crawl walls insulated?', [
    'none',
    'continuous',
    'cavity',
    'cavity-and-continuous',
  ]),
  climateZone: oneOf('Which energy-code climate zone is it?', ['1', '2', '3', '4', '5', '6', '7', '8']),
  marineZone: yesNo('Is the climate zone marine (letter C)?'),
  warmHumidZone: yesNo('Is it in zone 1A, 2A or 3A below the warm-humid line?'),
  freezingWinters: yesNo('Does the ground or an outdoor pipe freeze there?'),
  floodZone: yesNo('Does the house stand in a mapped flood hazard area?'),
  termiteZone: oneOf('What is the termite probability there?', ['none', 'slight', 'moderate', 'very-heavy']),
  accessKind: oneOf('Is the access a floor hatch or an opening in the wall?', [
    'floor-hatch',
    'wall-opening',
  ]),
  areawayPresent: yesNo('Is there an areaway in front of a sunken wall opening?'),
  applianceInSpace: yesNo('Is a heating, cooling or water-heating appliance in the space?'),
  applianceSupport: oneOf('Does the equipment stand on a slab or hang?', ['slab', 'hung']),
  overflowWouldHarm: yesNo('Would an overflow of the unit harm the building?'),
  passageStandingHeight: yesNo(
    'Is the passage to the equipment 6 ft (1.83 m) high and 22 in (559 mm) wide all along?',
  ),
  sunkenPassage: yesNo('Is the passage or pit of the equipment dug deeper than 12 in (305 mm)?'),
  serviceOrStorage: yesNo('Is the space used for storage or does it hold equipment that is serviced?'),
  combustionAppliance: yesNo(
    'Does a fuel-burning appliance draw air from the crawl space or vent through it?',
  ),
  combustionAirFromIndoors: yesNo(
    'Do fuel-burning appliances take their air from inside the space or house?',
  ),
  ductsInSpace: yesNo('Do ducts run through the space?'),
  electricityInSpace: yesNo('Is there wiring, a receptacle or a powered unit in the space?'),
  receptacleInSpace: yesNo('Is there a receptacle in the space?'),
  lightingInSpace: yesNo('Are there lights in the space?'),
  condensateLine: yesNo('Is there a condensate line in the space?'),
  condensatePump: yesNo('Is there a condensate pump?'),
  condensateIntoSump: yesNo('Does condensate run into the drain sump?'),
  sumpPresent: yesNo('Is there a sump?'),
  sumpOpenToSoil: yesNo('Is the sump open to the soil or the end of a drain loop?'),
  sumpIsFloorDrain: yesNo('Does the sump also serve as the floor drain?'),
  sumpOnlyRelief: yesNo('Is the sump the only way out for water on the floor?'),
  sumpLidClosed: yesNo('Is the sump lid meant to be airtight?'),
  plumbingCode: oneOf('Which plumbing code rules there?', ['irc', 'ipc', 'upc']),
  drainPresent: yesNo('Is there a drain under or around the floor?'),
  drainSide: oneOf('Is the drain inside or outside the footing?', ['interior', 'exterior']),
  drainToDaylight: yesNo('Does the drain run to daylight?'),
  sewerBackupPossible: yesNo('Can the sewer that takes the drain back up?'),
  wallRetainsEarth: yesNo('Does a masonry or concrete wall hold back earth round usable space below grade?'),
  freeDrainingSoil: yesNo('Is the soil well-drained gravel or sand?'),
  groundWaterOrPoorRunoff: yesNo(
    'Can ground water come within 6 in (152 mm) of the floor, or does surface water stand near the house?',
  ),
  expansiveSoil: yesNo('Is the soil expansive or collapsible?'),
  pavingAtWall: yesNo('Is there paving within 10 ft (3.05 m) of the wall?'),
  untreatedFraming: yesNo('Is the floor framing of wood that is neither treated nor decay-resistant?'),
  untreatedPosts: yesNo('Do untreated wood posts stand in the space?'),
  girderPockets: yesNo('Do girder ends sit in masonry pockets?'),
  foamPresent: yesNo('Is there foam plastic on walls, rim or vents?'),
  foamEntryOnlyForService: yesNo('Is the space entered only to service utilities?'),
  ignitionBarrier: oneOf('What covers the foam as an ignition barrier?', [
    'mineral-fiber',
    'wood-panel',
    'particleboard',
    'hardboard',
    'gypsum',
    'steel',
  ]),
  bareSprayFoamAtRim: yesNo('Is spray foam left bare at the rim or sill?'),
  exposedFacings: yesNo('Are insulation facings left exposed in the space?'),
  radonSystem: yesNo('Is there a soil-gas system under a membrane?'),
  radonOutletPosition: oneOf('Is the nearest operable opening below the soil-gas outlet or beside it?', [
    'above-opening',
    'beside-opening',
  ]),
  moldPresent: yesNo('Is mold seen or suspected?'),
  moldWorkUnderWay: yesNo('Is mold being removed?'),
  rotPresent: yesNo('Is decayed wood seen or suspected?'),
  borateStrength: oneOf('Which strength of borate solution is used?', ['10-percent', '15-percent']),
  supportsDoubtful: yesNo('Are piers, shims or girders leaning, stacked or failing?'),
  standingWater: yesNo('Does water stand on the floor?'),
  builtBefore1978: yesNo('Was the house built before 1978?'),
  suspectAsbestos: yesNo('Is there old pipe wrap, duct tape, cement board or vermiculite?'),
  rodentSigns: yesNo('Are there droppings, nests or runs of rodents?'),
  birdOrBatDroppings: yesNo('Are there bird or bat droppings?'),
  sewagePresent: yesNo('Is there sewage in the space?'),
  gasSmell: yesNo('Is there a smell of fuel gas?'),
} as const satisfies Record<string, Fact>;

/** Name of a fact. */
export type FactKey = keyof typeof facts;

/** What a fact may be. */
export type FactValue<K extends FactKey> = (typeof facts)[K]['values'] extends readonly (infer V)[]
  ? V
  : boolean;

/** The facts known about a job. Absent means unknown. */
export type JobFacts = { readonly [K in FactKey]?: FactValue<K> };

/** Whether `value` is one of the answers that the fact allows. */
export function isFactValue(key: FactKey, value: unknown): boolean {
  const { values } = facts[key];
  if (values === 'yes-no') return typeof value === 'boolean';
  return typeof value === 'string' && (values as readonly string[]).includes(value);
}
