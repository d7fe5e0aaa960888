import type { CapillaryWall } from '../moisture/wall.ts';
import type { SeasonMachine } from './season-case.ts';
import { stepPlaces, surfacePlaces } from './step-values.ts';
import { FILMS_LENGTH, SOIL_LENGTH, WOOD_LENGTH } from './store-places.ts';

/** Numbers of a case that the hourly loop reads, worked out once by `compileCase`. */
const c = {
  airMassKg: 0.5,
  airHeatJPerK: 0.5,
  planM2: 0.5,
  floorWPerK: 0.5,
  wallAboveWPerK: 0.5,
  wallBelowWPerK: 0.5,
  solarFactor: 0.5,
  ductWPerK: 0.5,
  ductSkinShare: 0.5,
  fanW: 0.5,
  fanExhaustKgPerS: 0.5,
  supplyKgPerS: 0.5,
  /** Air exchange without a network: changes per hour at no temperature difference, more per kelvin from that reference. */
  airChangesPerHour: 0.5,
  perKelvin: 0.5,
  referenceC: 20.5,
  fixedHouseKgPerS: 0.5,
  /** From air to the middle of the top soil layer, W/(m²·K); surface = top layer + share (air − top layer). */
  airToSoil: 0.5,
  surfaceShare: 0.5,
  deepC: 10.5,
  /** From the last soil layer to the deep ground, W/(m²·K). */
  deepWPerM2K: 0.5,
  /** Undisturbed ground: mean − cosine·cos − sine·sin of the day's angle, here at the wall. */
  waveMean: 10.5,
  wallWaveCos: 0.5,
  wallWaveSin: 0.5,
  /** Ground: m³/s through open soil, kg/(s·Pa) through the sheet, m³/s over standing water. */
  openM3PerS: 0.5,
  sheetKgPerSPa: 0.5,
  standingM3PerS: 0.5,
  wallAbovePermeance: 0.5,
  wallBelowPermeance: 0.5,
  floorPermeance: 0.5,
  otherKgPerS: 0.5,
  /** Inside wall surface = air − share (air − outside side). */
  wallAboveShare: 0.5,
  wallBelowShare: 0.5,
  massTransfer: 0.5,
  capillaryLengthM: 0.5,
  capillaryHeightM: 0.5,
  /** 1 where evaporation cools the surface that it leaves, else 0. */
  latentOn: 0.5,
};

/** See `loopRoom.c`. */
export type CaseNumbers = Readonly<typeof c>;

/** What acts on the space during one step. */
const drive = {
  outdoorC: 0.5,
  outdoorHumidity: 0.005,
  outdoorVaporPa: 500.5,
  pressurePa: 101325.5,
  solarWPerM2: 0.5,
  windMPerS: 0.5,
  /** Cosine and sine of the yearly angle. */
  yearCos: 0.5,
  yearSin: 0.5,
  houseC: 20.5,
  houseHumidity: 0.005,
  runShare: 0.5,
  supplyC: 14.5,
  supplyHumidity: 0.005,
  outdoorKgPerS: 0.5,
  houseKgPerS: 0.5,
  /** Share of all air entering the house that came up through the floor. */
  floorShare: 0.5,
  /** Electricity of the fans, W. */
  fanW: 0.5,
  cooled: false,
  powerOn: true,
  machinesOn: true,
};

/** The air of the space and what is on its way from one part of it to another. */
const air = {
  airC: 10.5,
  humidityRatio: 0.005,
  /** Heat that the last step left to the next, W: from machines and evaporation to the air, and to the soil. */
  airHeatW: 0.5,
  soilHeatW: 0.5,
  /** Mean vapor pressure of the step, Pa. */
  vaporPa: 500.5,
  /** Water on its way to the liner, kg. */
  fallingKg: 0.5,
};

/** Length of the step and what it makes of the soil column, see `loadSoil`. */
const step = {
  seconds: 3600.5,
  /** 1/theta: 2 centered in time, 1 fully implicit. */
  overTheta: 1.5,
  layers: 7,
  /** What stands against the top layer, the air left out, W/(m²·K). */
  topPivot: 0.5,
  lateralSteady: 0.5,
  lateralCos: 0.5,
  lateralSin: 0.5,
};

/** Linear balance of the vapor in the air during one step, and what came out of it. */
const balance = {
  airC: 0.5,
  saturationPa: 0.5,
  pressurePa: 0.5,
  /** Vapor pressure over humidity ratio, Pa. */
  kappa: 0.5,
  /** Humidity ratio at the start of the step and of saturated air. */
  start: 0.005,
  saturated: 0.005,
  /** Mass of the air over the length of the step, kg/s. */
  capacity: 0.5,
  /** kg/s, and kg/s per unit of humidity ratio. */
  source: 0.5,
  conductance: 0.5,
  machinesOn: false,
  /** Humidity ratio that the first machine running through works towards. */
  target: 0.005,
  mean: 0.005,
  end: 0.005,
  /** Vapor that falls out because the air cannot hold it, kg/s. */
  fogKgPerS: 0.5,
  machineKgPerS: 0.5,
};

/** Machines from the highest set-point down, with what each removes, kg/s; and the wall that water rises in. */
const parts = {
  machines: [] as readonly SeasonMachine[],
  removal: new Float64Array(0),
  capillaryWall: { thicknessM: 0.2, sorptivityMPerRootS: 0.5, wetPorosity: 0.2 } as CapillaryWall,
};

/**
 * Working room of the hourly loop: numbers of the case, its state and the step under way. There is one for all, and a
 * pass fills all of it before it reads any: nothing goes from one case to the next.
 *
 * Compiled code addresses arrays and objects that are constants of the file directly; handed in as arguments, each use
 * of them looks up where they lie, of what kind and how long they are, which was half of the time of a year. Hence
 * files take what they need out of this object into constants of their own, as with `stepPlaces`; numbers start as
 * fractions, because a whole number would be held in another form; and arrays are longer than 8, because shorter ones
 * are moved about in memory.
 */
export const loopRoom = {
  c,
  drive,
  air,
  step,
  balance,
  parts,
  /** Means of the step, see `stepPlaces`. */
  values: new Float64Array(stepPlaces.VALUES),
  /** Temperature and saturation pressure, Pa, of all surfaces, see `surfacePlaces`. */
  placesC: new Float64Array(surfacePlaces.PLACES),
  placesPa: new Float64Array(surfacePlaces.PLACES),
  /** Soil by layer, wood by site, films by surface; each with a stride of its own, see `soilPlaces` and `waterPlaces`. */
  soil: new Float64Array(SOIL_LENGTH),
  wood: new Float64Array(WOOD_LENGTH),
  film: new Float64Array(FILMS_LENGTH),
};
