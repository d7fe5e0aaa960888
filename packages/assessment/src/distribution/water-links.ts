import { type moisture, moisture as moistureEngine } from '@undercroft/engine';
import { measured } from '../assumptions.ts';

/** Humidity at which each path of the balance is taken beside the one that the machine holds. */
const DAMP = 0.9;

/** A path of the steady balance as the field takes it: water into the air = conductance × (its humidity − that of the air). */
export interface WaterLink {
  /** As in the balance, e.g. `open-ground:zone-1`. */
  readonly key: string;
  readonly title: string;
  /** kg/s per unit of humidity ratio. */
  readonly conductanceKgPerS: number;
  /** Humidity ratio that it draws the air to; of no meaning without a conductance. */
  readonly humidityRatio: number;
  /** Water that does not ask how damp the air is, kg/s; 0 where there is a conductance. */
  readonly fixedKgPerS: number;
}

/** A conductance below this is a source that does not answer to the air, kg/s. */
const LEAST_CONDUCTANCE = 1e-9;

function linkOf(
  { key, title }: moisture.BudgetPath,
  dry: { readonly humidityRatio: number; readonly kgPerS: number },
  damp: { readonly humidityRatio: number; readonly kgPerS: number },
): WaterLink {
  const conductanceKgPerS = (dry.kgPerS - damp.kgPerS) / (damp.humidityRatio - dry.humidityRatio);
  const humidityRatio = dry.humidityRatio + dry.kgPerS / conductanceKgPerS;
  if (conductanceKgPerS < LEAST_CONDUCTANCE || humidityRatio < 0) {
    return { key, title, conductanceKgPerS: 0, humidityRatio: 0, fixedKgPerS: dry.kgPerS };
  }
  return { key, title, conductanceKgPerS, humidityRatio, fixedKgPerS: 0 };
}

/**
 * Every path of a steady balance, its machine left out, as a line through two states of the air: at `relativeHumidity`
 * and near 90 %. At both the field gives what the balance gives; between them paths are straight but for masonry that
 * draws up water. Surfaces that may sweat, such as ducts, are left out: they take water in damp air only.
 * @param budget its state and machine are not looked at
 */
export function waterLinks(budget: moisture.BudgetInput, relativeHumidity: number): WaterLink[] {
  const { dehumidifier: _, ...without } = budget;
  const at = (value: number) =>
    moistureEngine.moistureBudget({
      ...without,
      state: { kind: 'read', relativeHumidity: measured(value) },
    });
  const dry = at(relativeHumidity);
  const damp = at(Math.max(DAMP, relativeHumidity + 0.05));
  const links: WaterLink[] = [];
  dry.paths.forEach((path, i) => {
    const other = damp.paths[i];
    const carries = path.kgPerDay !== 0 || other.kgPerDay !== 0;
    if (!carries || path.key.startsWith('cold-surface:')) return;
    links.push(
      linkOf(
        path,
        { humidityRatio: dry.humidityRatio, kgPerS: path.kgPerDay / 86_400 },
        { humidityRatio: damp.humidityRatio, kgPerS: other.kgPerDay / 86_400 },
      ),
    );
  });
  return links;
}
