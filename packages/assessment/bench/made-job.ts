import { type Job, type JobInput, readJob } from '@undercroft/record';

const visit = { when: '2031-05-14T09:20:00-04:00', who: 'Benedikta Aalto-Ruiz' };

/** A number from 0 to 1 that looks like chance and is the same each time (golden ratio sequence). */
const scattered = (index: number): number => (index * 0.618033988749895) % 1;

const between = (low: number, high: number, index: number): number =>
  low + (high - low) * scattered(index + 1);

/** A place of the 20 m by 15 m floor. */
const place = (index: number) => ({ xM: between(0.5, 19.5, index), yM: between(0.5, 14.5, 3 * index + 1) });

const list = <T>(count: number, make: (index: number) => T): T[] =>
  Array.from({ length: count }, (_, i) => make(i));

const SIDES = ['front', 'right', 'back', 'left'] as const;

const plan: JobInput['plan'] = {
  northDeg: 23,
  outline: {
    kind: 'corners',
    corners: [
      { id: 'front', at: { xM: 0, yM: 0 } },
      { id: 'right', at: { xM: 20, yM: 0 } },
      { id: 'back', at: { xM: 20, yM: 15 } },
      { id: 'left', at: { xM: 0, yM: 15 } },
    ],
  },
  ground: {
    cover: 'liner',
    surface: 'dark-damp',
    liner: { thicknessM: 0.0003, workmanship: 'laid-and-lapped', openAreaM2: 4.2 },
  },
  heights: list(12, (i) => ({ id: `h${i}`, at: place(i), clearHeightM: between(0.6, 1.3, i) })),
  zones: list(6, (i) => {
    const [x, y] = [2 + 3 * i, 3 + 1.5 * i];
    return {
      id: `z${i}`,
      name: `Bare patch ${i + 1}`,
      outline: [
        { xM: x, yM: y },
        { xM: x + 1.4, yM: y },
        { xM: x + 1.4, yM: y + 1.1 },
        { xM: x, yM: y + 1.1 },
      ],
      ground: { cover: 'bare-earth', surface: i % 2 === 0 ? 'dark-damp' : 'average' },
    };
  }),
  walls: SIDES.map((wallId, i) => ({
    id: `w-${wallId}`,
    wallId,
    material: 'hollow-block',
    thicknessM: 0.2,
    heightM: 1 + 0.1 * i,
    gradeAboveFloorM: 0.2 + 0.07 * i,
    dampness: i % 2 === 0 ? 'damp' : 'dry',
    dampHeightM: 0.25,
    linerHeightM: 0.4,
    linerSealed: i > 1,
    linerLooseM: i > 1 ? 0 : 2.4,
  })),
  piers: list(60, (i) => ({
    id: `p${i}`,
    at: { xM: 1.9 + 1.8 * (i % 10), yM: 1.4 + 2.4 * Math.floor(i / 10) },
    material: 'hollow-block',
    heightM: 0.8,
    wrapHeightM: i % 3 === 0 ? 0 : 0.2,
    wrapSealed: i % 3 === 1,
  })),
  joists: [{ id: 'j1', bearingDeg: 0, clearanceM: 0.62, species: 'southern-pine' }],
  girders: list(3, (i) => ({
    id: `g${i}`,
    from: { xM: 0, yM: 3.8 * (i + 1) },
    to: { xM: 20, yM: 3.8 * (i + 1) },
    clearanceM: 0.41 + 0.05 * i,
  })),
  ducts: list(4, (i) => ({
    id: `d${i}`,
    path: [
      { xM: 3 + 4 * i, yM: 2 },
      { xM: 3 + 4 * i, yM: 12 },
    ],
    widthM: 0.36,
    heightM: 0.2,
    clearanceM: 0.11 + 0.02 * i,
    carries: 'supply' as const,
  })),
  vents: list(12, (i) => ({
    id: `v${i}`,
    wallId: SIDES[i % 4] as string,
    offsetM: 1.5 + Math.floor(i / 4) * 4,
    widthM: 0.4,
    heightM: 0.2,
    netFreeAreaM2: 0.041,
    state: i % 3 === 0 ? ('loose-board' as const) : ('sealed' as const),
  })),
  equipment: [
    { id: 'e1', kind: 'dehumidifier', at: { xM: 9, yM: 7 }, ratedKgPerDay: 33, ratingPoint: '80F-60' },
    { id: 'e2', kind: 'sump', at: { xM: 19, yM: 14 }, diameterM: 0.46, depthM: 0.6, lid: 'loose' },
  ],
  seams: list(10, (i) => ({
    id: `s${i}`,
    path: [
      { xM: 1 + 1.9 * i, yM: 0 },
      { xM: 1 + 1.9 * i, yM: 15 },
    ],
    lapM: 0.1 + 0.02 * i,
    tapedM: i,
  })),
};

const readings: JobInput['readings'] = {
  air: list(14, (i) => ({
    id: `a${i}`,
    where: i === 0 ? ('outdoor' as const) : i === 1 ? ('house' as const) : ('crawl' as const),
    place: { at: place(i) },
    temperatureC: between(20, 24, i),
    relativeHumidity: between(0.6, 0.9, i),
    ...visit,
  })),
  surface: list(26, (i) => ({
    id: `f${i}`,
    of: (['ground', 'liner', 'wall', 'duct', 'joist', 'rim'] as const)[i % 6] as 'ground',
    place: { at: place(i + 40) },
    temperatureC: between(15, 22, i),
    ...visit,
  })),
  wood: list(60, (i) => ({
    id: `m${i}`,
    member: (['joist', 'girder', 'sill', 'rim', 'subfloor'] as const)[i % 5] as 'joist',
    place: { at: place(i + 80) },
    shown: between(0.1, 0.26, i),
    species: 'southern-pine',
    woodTemperatureC: 21,
    ...visit,
  })),
  observations: list(60, (i) => ({
    id: `o${i}`,
    quantity: ['seamLapWidthM', 'ductToEarthM', 'joistClearanceM', 'linerEdgeHeightM', 'pierWrapHeightM'][
      i % 5
    ] as string,
    value: between(0.08, 0.5, i),
    place: { at: place(i + 140) },
    ...visit,
  })),
};

/**
 * A job at the upper end of what one survey brings: 300 m² of floor, 60 piers, 100 readings of air, surfaces and wood,
 * 60 observations, 80 findings. Made by rule, the same each time.
 */
export function madeJob(): Job {
  const read = readJob({
    format: 'undercroft-job',
    version: 2,
    id: 'bench-made',
    header: {
      title: 'Made job of 300 square meters',
      latitudeDeg: 36.02,
      longitudeDeg: -79.71,
      elevationM: 214,
      surveyedOn: '2031-05-14',
    },
    house: {
      yearBuilt: 1974,
      spaceType: 'closed',
      heatedVolumeM3: 700,
      climateZone: '4A',
      soil: 'clay-loam',
    },
    plan,
    readings,
    findings: list(80, (i) => ({
      id: `n${i}`,
      defect: ['exposed-earth', 'piers-not-wrapped', 'visible-mold', 'standing-water'][i % 4] as string,
      title: `Finding ${i + 1}`,
      place: { at: place(i + 200) },
      severity: i % 5,
      observationIds: [`o${i % 60}`],
      ...visit,
    })),
  } satisfies JobInput);
  if (!read.ok) throw new Error(JSON.stringify(read.issues.slice(0, 3)));
  return read.job;
}
