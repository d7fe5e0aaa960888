/** How a periodic air temperature arrives in the ground below it. */
export interface GroundWave {
  /** Swing at the depth over the swing of the air, 0..1. */
  readonly ratio: number;
  /** How far the wave at the depth runs behind the air, radians (2 pi is one period). */
  readonly lagRad: number;
}

/**
 * Steady periodic answer of deep uniform ground to air of sinusoidal temperature above it, through a surface film.
 * The exact solution that numerical ground models are checked against.
 *
 * Kernel: unchecked; all arguments above 0, depth 0 or more. An endless film coefficient gives the plain damped wave.
 * Source: Carslaw and Jaeger 1959 section 2.6, from memory; follows in a few lines from the heat equation.
 * @param depthM depth below the surface, m
 * @param periodS length of one period, s
 * @param conductivityWPerMK conductivity of the ground, W/(m·K)
 * @param diffusivityM2PerS diffusivity of the ground, m²/s
 * @param filmWPerM2K surface coefficient between air and ground, W/(m²·K)
 */
export function periodicGroundWave(
  depthM: number,
  periodS: number,
  conductivityWPerMK: number,
  diffusivityM2PerS: number,
  filmWPerM2K: number,
): GroundWave {
  const wave = Math.sqrt(Math.PI / (diffusivityM2PerS * periodS));
  const film = (conductivityWPerMK * wave) / filmWPerM2K;
  return {
    ratio: Math.exp(-depthM * wave) / Math.sqrt(1 + 2 * film + 2 * film * film),
    lagRad: depthM * wave + Math.atan2(film, 1 + film),
  };
}
