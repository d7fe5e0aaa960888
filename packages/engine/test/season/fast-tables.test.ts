import { describe, expect, it } from 'vitest';
import { createNetwork } from '../../src/airflow/network.ts';
import { createNetworkState } from '../../src/airflow/network-state.ts';
import { solveNetwork } from '../../src/airflow/solve-network.ts';
import { seededRandom } from '../../src/numerics/seeded-random.ts';
import { dewPointC } from '../../src/psychrometrics/dew-point.ts';
import { saturationPressurePa } from '../../src/psychrometrics/saturation-pressure.ts';
import { decayOf } from '../../src/season/decay.ts';
import {
  dewPointTable,
  saturationTable,
  tableDewPoint,
  tableSaturationPa,
  tableWoodHumidities,
  woodTable,
} from '../../src/season/fast-tables.ts';
import { createFlowTable, lookUpFlows } from '../../src/season/flow-table.ts';
import { createDrive } from '../../src/season/state.ts';
import { equilibriumRelativeHumidity } from '../../src/wood/equilibrium.ts';
import { networkCase } from './test-cases.ts';

/** Limits are those that the doc comments state. */
describe('tables of the hourly loop against what they stand for', () => {
  const random = seededRandom(11);

  it('saturation pressure within 7e-6 of its value above freezing and 3e-5 below, but for the bend at 0.01 °C', () => {
    for (let i = 0; i < 5000; i++) {
      const t = -75 + 200 * random();
      if (t > -0.01 && t < 0.11) continue;
      const exact = saturationPressurePa(t);
      expect(Math.abs(tableSaturationPa(saturationTable(), t) / exact - 1)).toBeLessThan(t > 0 ? 7e-6 : 3e-5);
    }
  });

  it('humidity of wood within 0.001', () => {
    const out = new Float64Array(2);
    for (let i = 0; i < 3000; i++) {
      const t = -20 + 75 * random();
      const u = 0.02 + 0.3 * random();
      tableWoodHumidities(woodTable(), Float64Array.of(t), 0, Float64Array.of(u), out, 0, 2);
      expect(Math.abs(out[0]! - equilibriumRelativeHumidity(t, u))).toBeLessThan(0.001);
    }
  });

  it('dew point within 0.01 K', () => {
    const values = new Float64Array(2);
    for (let i = 0; i < 3000; i++) {
      const t = -30 + 90 * random();
      values[0] = saturationPressurePa(t);
      if (Math.abs(t) < 0.5) continue;
      tableDewPoint(dewPointTable(), values, 0, 1);
      expect(Math.abs(values[1]! - dewPointC(values[0]))).toBeLessThan(0.01);
    }
  });

  it('decay within 3e-9', () => {
    for (let i = 0; i < 3000; i++) {
      const x = 25 * random();
      expect(Math.abs(decayOf(x) - Math.exp(-x))).toBeLessThan(3e-9);
    }
  });

  it.each([8000, 800, 100])(
    'flows of a network with %i cm² of vents, rms within 2 %% of their mean',
    (area) => {
      const exchange = networkCase(area).airExchange;
      if (exchange.kind !== 'network') throw new Error('a network was expected');
      const network = createNetwork(exchange.network);
      const solver = createNetworkState(network);
      const table = createFlowTable(exchange.network, 21);
      const drive = createDrive();
      let squares = 0;
      let mean = 0;
      const n = 2000;
      for (let i = 0; i < n; i++) {
        drive.outdoorC = -10 + 28 * random();
        drive.windMPerS = 8 * random();
        const crawlC = 8 + 14 * random();
        lookUpFlows(table, drive, crawlC);
        solveNetwork(
          network,
          {
            outdoorTemperatureC: drive.outdoorC,
            crawlTemperatureC: crawlC,
            houseTemperatureC: 21,
            windMPerS: drive.windMPerS,
          },
          solver,
        );
        squares += (drive.outdoorKgPerS - solver.crawlOutdoorInflowKgPerS) ** 2 / n;
        mean += solver.crawlOutdoorInflowKgPerS / n;
      }
      expect(Math.sqrt(squares) / mean).toBeLessThan(0.02);
    },
  );
});
