import { describe, expect, it } from 'vitest';
import { createNetwork } from '../../src/airflow/network.ts';
import { createNetworkState } from '../../src/airflow/network-state.ts';
import { solveNetwork } from '../../src/airflow/solve-network.ts';
import { seededRandom } from '../../src/numerics/seeded-random.ts';
import { dewPointC } from '../../src/psychrometrics/dew-point.ts';
import { saturationPressurePa } from '../../src/psychrometrics/saturation-pressure.ts';
import { decayOf } from '../../src/season/decay.ts';
import { fillTables, setDewPoint, setWoodHumidity, tableSaturationPa } from '../../src/season/fast-tables.ts';
import { createFlowTable, lookUpFlows } from '../../src/season/flow-table.ts';
import { loopRoom } from '../../src/season/loop-room.ts';
import { stepPlaces } from '../../src/season/step-values.ts';
import { waterPlaces } from '../../src/season/store-places.ts';
import { equilibriumRelativeHumidity } from '../../src/wood/equilibrium.ts';
import { networkCase } from './test-cases.ts';

const { DEW_POINT_C, VAPOR_PA } = stepPlaces;
const { WOOD_BASE } = waterPlaces;
const { drive, values, wood } = loopRoom;
fillTables();

/** Limits are those that the doc comments state. */
describe('tables of the hourly loop against what they stand for', () => {
  const random = seededRandom(11);

  it('saturation pressure within 7e-6 of its value above freezing and 3e-5 below, but for the bend at 0.01 °C', () => {
    for (let i = 0; i < 5000; i++) {
      const t = -75 + 200 * random();
      if (t > -0.01 && t < 0.11) continue;
      const exact = saturationPressurePa(t);
      expect(Math.abs(tableSaturationPa(t) / exact - 1)).toBeLessThan(t > 0 ? 7e-6 : 3e-5);
    }
  });

  it('humidity of wood within 0.001', () => {
    for (let i = 0; i < 3000; i++) {
      const t = -20 + 75 * random();
      const u = 0.02 + 0.3 * random();
      setWoodHumidity(0, t, u);
      expect(Math.abs(wood[WOOD_BASE]! - equilibriumRelativeHumidity(t, u))).toBeLessThan(0.001);
    }
  });

  it('dew point within 0.01 K', () => {
    for (let i = 0; i < 3000; i++) {
      const t = -30 + 90 * random();
      if (Math.abs(t) < 0.5) continue;
      const vaporPa = saturationPressurePa(t);
      values[VAPOR_PA] = vaporPa;
      setDewPoint();
      expect(Math.abs(values[DEW_POINT_C]! - dewPointC(vaporPa))).toBeLessThan(0.01);
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
      let squares = 0;
      let mean = 0;
      const n = 2000;
      for (let i = 0; i < n; i++) {
        drive.outdoorC = -10 + 28 * random();
        drive.windMPerS = 8 * random();
        const crawlC = 8 + 14 * random();
        lookUpFlows(table, crawlC);
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
