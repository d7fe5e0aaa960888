import { units } from '@undercroft/engine';
import type { Place } from '@undercroft/record';

/** Temperature for people, US unit first. */
export function temperatureWords(temperatureC: number): string {
  return `${units.formatQuantity(temperatureC, 'temperature', 'us', 1)} (${temperatureC.toFixed(1)} °C)`;
}

/** Share as a whole percentage, or with decimals. */
export function percentWords(fraction: number, digits = 0): string {
  return `${(100 * fraction).toFixed(digits)} %`;
}

/** Where something is, in words: what the surveyor wrote, else the thing it belongs to, else its coordinates. */
export function placeWords(place: Place | undefined): string {
  if (place === undefined) return 'place not recorded';
  if (place.words !== undefined) return place.words;
  const on = place.on === undefined ? '' : `${place.on.kind} ${place.on.id}`;
  if (place.at === undefined) return on === '' ? 'place not recorded' : on;
  const x = units.formatQuantity(place.at.xM, 'length', 'us');
  const y = units.formatQuantity(place.at.yM, 'length', 'us');
  return on === '' ? `${x} right, ${y} up on the plan` : `${on}, ${x} right, ${y} up on the plan`;
}
