import { annualDampingDepthM } from './undisturbed.ts';

/** Thermal properties of a ground. */
export interface Soil {
  readonly key: 'clay-or-silt' | 'sand-or-gravel' | 'rock' | 'dry' | 'average' | 'wet';
  readonly title: string;
  /** W/(m·K). */
  readonly conductivityWPerMK: number;
  /** Heat capacity of a volume, J/(m³·K). */
  readonly heatCapacityJPerM3K: number;
  /** Id of the source of both. */
  readonly sourceId: string;
}

/**
 * Grounds to choose from. The first three are the classes of ISO 13370 (from memory; their periodic depths 2.2, 3.2 and
 * 4.2 m were seen in quotation and agree). The last three are the dry, average and wet soil of building handbooks, with
 * the heat capacity computed from conductivity and diffusivity. Measured soils scatter by a factor of two, mostly with
 * their water content.
 */
export const SOILS: readonly Soil[] = [
  {
    key: 'clay-or-silt',
    title: 'Clay or silt',
    conductivityWPerMK: 1.5,
    heatCapacityJPerM3K: 3.0e6,
    sourceId: 'iso-13370-2017-recalled',
  },
  {
    key: 'sand-or-gravel',
    title: 'Sand or gravel',
    conductivityWPerMK: 2.0,
    heatCapacityJPerM3K: 2.0e6,
    sourceId: 'iso-13370-2017-recalled',
  },
  {
    key: 'rock',
    title: 'Solid rock',
    conductivityWPerMK: 3.5,
    heatCapacityJPerM3K: 2.0e6,
    sourceId: 'iso-13370-2017-recalled',
  },
  {
    key: 'dry',
    title: 'Dry soil',
    conductivityWPerMK: 0.5,
    heatCapacityJPerM3K: 1.728e6,
    sourceId: 'soil-diffusivity-classes',
  },
  {
    key: 'average',
    title: 'Moist soil of average kind',
    conductivityWPerMK: 1.5,
    heatCapacityJPerM3K: 2.592e6,
    sourceId: 'soil-diffusivity-classes',
  },
  {
    key: 'wet',
    title: 'Wet soil',
    conductivityWPerMK: 2.2,
    heatCapacityJPerM3K: 2.376e6,
    sourceId: 'soil-diffusivity-classes',
  },
];

/** Thermal diffusivity of a soil, m²/s: conductivity over heat capacity. */
export function soilDiffusivityM2PerS(
  soil: Pick<Soil, 'conductivityWPerMK' | 'heatCapacityJPerM3K'>,
): number {
  return soil.conductivityWPerMK / soil.heatCapacityJPerM3K;
}

/**
 * Periodic penetration depth in m, the depth at which the annual swing is down to 1/e. ISO 13370 formula H.1 writes
 * sqrt(3.15e7 k/(pi c)), the same quantity with the year rounded to 3.15e7 s (0.06 % less).
 */
export function periodicDepthM(soil: Pick<Soil, 'conductivityWPerMK' | 'heatCapacityJPerM3K'>): number {
  return annualDampingDepthM(soilDiffusivityM2PerS(soil));
}
