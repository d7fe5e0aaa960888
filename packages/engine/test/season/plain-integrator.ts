import { createNetwork } from '../../src/airflow/network.ts';
import { createNetworkState } from '../../src/airflow/network-state.ts';
import { solveNetwork } from '../../src/airflow/solve-network.ts';
import { monthOfHour } from '../../src/climate/calendar.ts';
import { coldFactor } from '../../src/dehumidifier/frost.ts';
import { runningPowerW } from '../../src/dehumidifier/heat.ts';
import { partLoadFactor } from '../../src/dehumidifier/part-load.ts';
import { relativeCapacity } from '../../src/dehumidifier/surfaces.ts';
import { undisturbedGroundC } from '../../src/ground/undisturbed.ts';
import { saturationPressurePa } from '../../src/psychrometrics/saturation-pressure.ts';
import type { SeasonCase, SeasonWeather } from '../../src/season/season-case.ts';
import type { SpaceState } from '../../src/season/state.ts';
import { equilibriumRelativeHumidity } from '../../src/wood/equilibrium.ts';

/** Hourly means and monthly means of a plain run. */
export interface PlainYear {
  readonly temperatureC: Float64Array;
  readonly relativeHumidity: Float64Array;
  readonly waterRemovedKg: number;
  readonly energyKWh: number;
  readonly end: {
    readonly airC: number;
    readonly humidityRatio: number;
    readonly woodSurface: readonly number[];
  };
}

const R_VAPOR = 461.5;
const LATENT = 2.45e6;
const CP = 1006;

const vaporPa = (w: number, pressure: number) => (pressure * w) / (0.621945 + w);
const ratio = (p: number, pressure: number) => (0.621945 * p) / (pressure - p);

/**
 * The season's equations in their plainest form: everything explicit at one small step, exact saturation and sorption, no
 * tables, no linearization, heat of evaporation and machines in the same step. Slow and clear; the referee of the fast
 * scheme. Plan coefficients other than 1 are not covered.
 * @param start state at January 1, as the fast scheme settled on it
 * @param stepS length of the explicit step; 30 s is a fifth of the time constant of the air or less
 */
export function plainYear(
  space: SeasonCase,
  weather: SeasonWeather,
  start: SpaceState,
  stepS: number,
  hours = 8760,
): PlainYear {
  const { soil, cover, walls, house, ducts, wood, airExchange } = space;
  const sites = [wood.joists, wood.girder, wood.sill];
  const meanPressure = Array.from(weather.pressurePa).reduce((a, b) => a + b, 0) / 8760;
  const density = meanPressure / (287.042 * 288.15);
  const airKg = density * space.planAreaM2 * space.heightM;
  const monthC = monthMeans(weather);
  const network = airExchange.kind === 'network' ? createNetwork(airExchange.network) : undefined;
  const networkState = network === undefined ? undefined : createNetworkState(network);
  const machines = [...space.machines].sort((a, b) => a.setPoint - b.setPoint);

  // State.
  let airC = start.airC;
  let w = start.humidityRatio;
  const soilC = Array.from(start.soilC);
  const surface = Array.from(start.woodSurface);
  const core = Array.from(start.woodCore);
  const film = Array.from(start.filmKg);

  const thickness = soil.layersM;
  const total = thickness.reduce((a, b) => a + b, 0);
  const tieDepth = thickness.map(
    (_, i) =>
      soil.lateralOffsetM + soil.lateralDepthFactor * thickness.slice(0, i + 1).reduce((a, b) => a + b, 0),
  );
  const halfTop = thickness[0]! / (2 * soil.conductivityWPerMK);
  const toGround = 1 / (1 / soil.surfaceCoefficientWPerM2K + halfTop);
  const coveredM2 = cover.zones.reduce((a, z) => a + (1 - z.openFraction) * z.areaM2, 0);
  const filmArea = [coveredM2, walls.aboveGradeAreaM2, walls.belowGradeAreaM2, ducts.areaM2];
  const filmMost = [cover.puddleKgPerM2, walls.filmKgPerM2, walls.filmKgPerM2, ducts.filmKgPerM2];

  const temperatureC = new Float64Array(hours);
  const relativeHumidity = new Float64Array(hours);
  // Load of each machine, smoothed over an hour: a machine that cycles pays for cycling, not for its share of a step.
  const meanLoad = machines.map(() => 0);
  let removed = 0;
  let joules = 0;

  for (let hour = 0; hour < hours; hour++) {
    const outC = weather.temperatureC[hour]!;
    const outW = weather.humidityRatio[hour]!;
    const pressure = weather.pressurePa[hour]!;
    const sun = weather.globalHorizontalWPerM2?.[hour] ?? 0;
    const cooled = monthC[monthOfHour(hour)]! >= house.changeoverC;
    const houseC = cooled ? house.coolingTemperatureC : house.heatingTemperatureC;
    const houseLimit = cooled ? house.coolingRelativeHumidity : 0.9;
    const houseW = Math.min(
      outW + house.moistureGain,
      ratio(houseLimit * saturationPressurePa(houseC), meanPressure),
    );
    const failing = space.failures.filter((f) => hour >= Math.floor(f.fromHour) && hour < f.toHour);
    const powerOn = !failing.some((f) => f.what === 'power');
    const machinesOn = failing.length === 0;
    const run = powerOn ? ducts.maximumRunShare * runShare(space, cooled, outC) : 0;
    const supplyC = cooled ? ducts.coolingSupplyC : ducts.heatingSupplyC;
    const supplyW = cooled ? Math.min(ducts.coolingSupplyHumidityRatio, houseW) : houseW;
    const fanW = powerOn ? space.fans.reduce((a, f) => a + f.powerW * f.runShare, 0) : 0;
    const exhaust = powerOn ? space.fans.reduce((a, f) => a + f.exhaustM3PerS * f.runShare, 0) * density : 0;
    // The wave moves so slowly that its value in the middle of the hour serves for all of it.
    const day = (hour + 0.5) / 24;
    const around = (depth: number) =>
      undisturbedGroundC(soil.annualWave, depth, day, soil.waveDiffusivityM2PerS);
    const tieC = tieDepth.map(around);
    const wallGroundC = around(walls.belowGradeDepthM);
    const sunnyC = outC + walls.solarFactorKM2PerW * sun;

    let sumC = 0;
    let sumRh = 0;
    const steps = Math.round(3600 / stepS);
    for (let step = 0; step < steps; step++) {
      let fromOut = 0;
      let fromHouse = 0;
      if (network !== undefined && networkState !== undefined) {
        solveNetwork(
          network,
          {
            outdoorTemperatureC: outC,
            crawlTemperatureC: airC,
            houseTemperatureC: houseC,
            windMPerS: weather.windSpeedMPerS[hour]!,
          },
          networkState,
        );
        fromOut = networkState.crawlOutdoorInflowKgPerS;
        fromHouse = networkState.houseToCrawlKgPerS;
      } else if (airExchange.kind === 'fixed') {
        const ach =
          airExchange.airChangesPerHour + airExchange.perKelvin * Math.abs(outC - airExchange.referenceC);
        fromOut = Math.max((ach * airKg) / 3600, exhaust);
        fromHouse = (airExchange.houseAirChangesPerHour * airKg) / 3600;
      }
      const supply = ducts.supplyFlowM3PerS * density * run;

      // Temperatures of surfaces.
      const groundC = soilC[0]! + toGround * halfTop * (airC - soilC[0]!);
      const wallAboveC = airC - (walls.aboveGradeUWPerM2K / walls.insideCoefficientWPerM2K) * (airC - sunnyC);
      const wallBelowC =
        airC - (walls.belowGradeUWPerM2K / walls.insideCoefficientWPerM2K) * (airC - wallGroundC);
      const ductR = ducts.resistanceM2KPerW + 1 / ducts.outsideCoefficientWPerM2K;
      const skinC = airC + (1 / ducts.outsideCoefficientWPerM2K / ductR) * (supplyC - airC);

      // Water into the air, kg/s.
      const p = vaporPa(w, pressure);
      const saturation = saturationPressurePa(airC);
      const groundPa = saturationPressurePa(groundC);
      const perM3 = 1 / (R_VAPOR * ((airC + groundC) / 2 + 273.15));
      let openGround = 0;
      let sheet = 0;
      for (const zone of cover.zones) {
        const resistance = 1 / cover.massTransferMPerS + zone.dryLayerResistanceSPerM;
        openGround += ((zone.openFraction * zone.areaM2) / resistance) * perM3 * (groundPa - p);
        sheet += (1 - zone.openFraction) * zone.areaM2 * zone.sheetPermeanceKgPerM2SPa * (groundPa - p);
      }
      const { seams } = cover;
      openGround +=
        ((seams.lengthM * 2.5e-5 * seams.gapM * seams.pumpingFactor) / seams.lapM) * perM3 * (groundPa - p);
      const standing = cover.standingWaterAreaM2 * cover.massTransferMPerS * perM3 * (groundPa - p);
      const wallVapor =
        walls.permeanceKgPerM2SPa *
        (walls.aboveGradeAreaM2 * (vaporPa(outW, pressure) - p) +
          walls.belowGradeAreaM2 * (saturationPressurePa(wallGroundC) - p));
      const rising = risingDamp(space, saturationPressurePa(wallBelowC), p, wallBelowC);
      const floorVapor = house.floorPermeanceKgPerM2SPa * space.planAreaM2 * (vaporPa(houseW, pressure) - p);
      const other = space.otherWaterKgPerDay / 86_400;

      let fromWood = 0;
      let drips = 0;
      sites.forEach((site, i) => {
        const woodC = airC + site.houseWeight * (houseC - airC) + site.outdoorWeight * (outC - airC);
        // Wood colder than −20 or warmer than 60 °C sorbs as at that temperature.
        const sorptionC = Math.min(60, Math.max(-20, woodC));
        const woodPa = saturationPressurePa(woodC) * equilibriumRelativeHumidity(sorptionC, surface[i]!);
        const flow = site.areaM2 * site.permeanceKgPerM2SPa * (woodPa - p);
        const fromCore = (site.coreMassKg / (site.coreDays * 86_400)) * (core[i]! - surface[i]!);
        surface[i] = surface[i]! + ((fromCore - flow) * stepS) / site.surfaceMassKg;
        core[i] = core[i]! - (fromCore * stepS) / site.coreMassKg;
        if (surface[i]! > 0.6) {
          drips += (surface[i]! - 0.6) * site.surfaceMassKg;
          surface[i] = 0.6;
        }
        fromWood += flow;
      });

      let fromFilms = 0;
      let falling = drips;
      const filmC = [groundC, wallAboveC, wallBelowC, skinC];
      for (let j = 3; j >= 0; j--) {
        const transfer = (filmArea[j]! * cover.massTransferMPerS) / (R_VAPOR * (airC + 273.15));
        let flow = transfer * (saturationPressurePa(filmC[j]!) - p);
        if (j === 3) {
          // Ducts are cold for the share of time that the air handler runs.
          const between = film[j]! > 0 ? transfer * (saturation - p) : 0;
          flow = run * (flow > 0 && film[j] === 0 ? 0 : flow) + (1 - run) * between;
        }
        flow = Math.min(flow, film[j]! / stepS);
        fromFilms += flow;
        film[j] = film[j]! - flow * stepS;
        if (j === 0) {
          film[0] = film[0]! + falling;
          falling = 0;
        }
        const most = filmArea[j]! * filmMost[j]!;
        if (film[j]! > most) {
          falling += film[j]! - most;
          film[j] = most;
        }
      }

      const gain =
        fromOut * (outW - w) +
        fromHouse * (houseW - w) +
        supply * (supplyW - w) +
        openGround +
        sheet +
        standing +
        wallVapor +
        rising +
        floorVapor +
        other +
        fromWood +
        fromFilms;
      let next = w + (stepS / airKg) * gain;

      // Machines, the lowest set-point first: each balances what comes in and takes the air to its set-point within
      // two minutes, if it can. Faster control would swing with the machine's own heat.
      let machineKgPerS = 0;
      let machineW = 0;
      if (machinesOn) {
        for (const [k, machine] of machines.entries()) {
          const atSet = ratio(machine.setPoint * saturation, pressure);
          const wanted = Math.max(0, gain - machineKgPerS + ((w - atSet) * airKg) / 120);
          const rh = Math.min(1, vaporPa(Math.max(w, 1e-9), pressure) / saturation);
          const capacity =
            (machine.ratedKgPerDay / 86_400) *
            coldFactor(airC, machine.cold, machine.lowestIntakeC) *
            relativeCapacity(airC, rh);
          const taken = Math.min(wanted, capacity);
          const load = taken > 0 ? taken / capacity : 0;
          meanLoad[k] = meanLoad[k]! + (load - meanLoad[k]!) * (stepS / 3600);
          if (taken <= 0) continue;
          next -= (taken * stepS) / airKg;
          machineKgPerS += taken;
          machineW +=
            (load / partLoadFactor(meanLoad[k]!)) *
            runningPowerW(machine.ratedKgPerDay, machine.ratedLPerKWh, airC, rh);
        }
      }
      const saturated = ratio(saturation, pressure);
      let fog = 0;
      if (next > saturated) {
        fog = ((next - saturated) * airKg) / stepS;
        film[0] = Math.min(filmArea[0]! * filmMost[0]!, film[0]! + fog * stepS);
        next = saturated;
      }

      // Heat.
      const latent = space.latentAtSurfaces ? LATENT : 0;
      const airW =
        (house.floorUWPerM2K * space.planAreaM2 + fromHouse * CP) * (houseC - airC) +
        walls.aboveGradeUWPerM2K * walls.aboveGradeAreaM2 * (sunnyC - airC) +
        walls.belowGradeUWPerM2K * walls.belowGradeAreaM2 * (wallGroundC - airC) +
        fromOut * CP * (outC - airC) +
        (supply * CP + (ducts.areaM2 / ductR) * run) * (supplyC - airC) +
        toGround * space.planAreaM2 * (soilC[0]! - airC) +
        fanW +
        machineW +
        LATENT * machineKgPerS -
        latent * (rising + other + fromWood + fromFilms);
      const groundW = -latent * (openGround + standing - fog);
      const flux = thickness.map((d, i) => {
        const below = thickness[i + 1];
        const distance = below === undefined ? d / 2 + soil.deepDistanceM : (d + below) / 2;
        const belowC = below === undefined ? soil.deepTemperatureC : soilC[i + 1]!;
        return (soil.conductivityWPerMK / distance) * (soilC[i]! - belowC);
      });
      const intoTop = toGround * (airC - soilC[0]!) + groundW / space.planAreaM2;
      for (let i = 0; i < thickness.length; i++) {
        const lateral = ((soil.lateralWPerM2K * thickness[i]!) / total) * (tieC[i]! - soilC[i]!);
        const above = i === 0 ? intoTop : flux[i - 1]!;
        soilC[i] =
          soilC[i]! + (stepS * (above - flux[i]! + lateral)) / (soil.heatCapacityJPerM3K * thickness[i]!);
      }
      airC += (stepS * airW) / (airKg * CP);
      w = next;
      removed += machineKgPerS * stepS;
      joules += (machineW + fanW) * stepS;
      sumC += airC / steps;
      sumRh += Math.min(1, vaporPa(w, pressure) / saturationPressurePa(airC)) / steps;
    }
    temperatureC[hour] = sumC;
    relativeHumidity[hour] = sumRh;
  }
  return {
    temperatureC,
    relativeHumidity,
    waterRemovedKg: removed,
    energyKWh: joules / 3.6e6,
    end: { airC, humidityRatio: w, woodSurface: surface },
  };
}

function monthMeans(weather: SeasonWeather): number[] {
  const sums = new Array<number>(12).fill(0);
  const counts = new Array<number>(12).fill(0);
  for (let hour = 0; hour < 8760; hour++) {
    const month = monthOfHour(hour);
    sums[month] = sums[month]! + weather.temperatureC[hour]!;
    counts[month] = counts[month]! + 1;
  }
  return sums.map((sum, month) => sum / counts[month]!);
}

function runShare(space: SeasonCase, cooled: boolean, outC: number): number {
  const { coolingStartC, coolingFullC, heatingStartC, heatingFullC } = space.ducts;
  if (cooled) {
    if (coolingFullC === coolingStartC) return outC > coolingStartC ? 1 : 0;
    return Math.min(1, Math.max(0, (outC - coolingStartC) / (coolingFullC - coolingStartC)));
  }
  if (heatingFullC === heatingStartC) return outC < heatingStartC ? 1 : 0;
  return Math.min(1, Math.max(0, (heatingStartC - outC) / (heatingStartC - heatingFullC)));
}

function risingDamp(space: SeasonCase, wallPa: number, airPa: number, wallC: number): number {
  const { capillary } = space.walls;
  if (capillary.lengthM === 0 || wallPa <= airPa) return 0;
  const drying = (space.cover.massTransferMPerS * (wallPa - airPa)) / (R_VAPOR * (wallC + 273.15)) / 1000;
  const height =
    capillary.sorptivityMPerRootS * Math.sqrt(capillary.thicknessM / (2 * drying * capillary.wetPorosity));
  return capillary.lengthM * drying * Math.min(height, capillary.faceHeightM) * 1000;
}
