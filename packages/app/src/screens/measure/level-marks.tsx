import type { LevelSheet } from '@undercroft/assessment';
import { units } from '@undercroft/engine';
import { At } from '../../plan/projection.tsx';
import { useSettings } from '../../settings/settings.ts';

/** A height over the datum, with its sign. */
export function signedLength(meters: number, system: units.UnitSystem): string {
  const shown = units.formatQuantity(Math.abs(meters), 'length', system);
  const isZero = units.formatQuantity(0, 'length', system) === shown;
  return isZero ? '±0' : `${meters < 0 ? '−' : '+'}${shown}`;
}

/** Leveled points over the plan, each with its number and height. */
export function LevelMarks({ sheet }: { readonly sheet: LevelSheet | null }) {
  const { units: system } = useSettings();
  return (sheet?.spots ?? []).map((spot, index) => (
    <At key={spot.id} point={spot.at}>
      <g className="level-mark">
        <path d="M0 0L-9 -14H9Z" />
        <text x="12" y="-4">
          {index + 1}: {signedLength(spot.heightM, system)}
        </text>
      </g>
    </At>
  ));
}
