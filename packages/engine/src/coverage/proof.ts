import type { Notice } from '../numerics/notice.ts';
import { requireRange } from '../numerics/require-range.ts';
import {
  type Enough,
  floorSeenFrom,
  type MissingProof,
  type Part,
  type ProofSubject,
  partsOf,
} from './proof-parts.ts';
import type { CoverageScene, Station } from './scene.ts';
import { type CoverageOptions, lookAround } from './scene-seen.ts';
import type { StationSeen } from './station-seen.ts';
import { MAX_INCIDENCE_DEG } from './visible-region.ts';

/** A finding, or a claim that something was done. */
export interface Claim {
  readonly id: string;
  /** One thing or several, all of which must be shown. */
  readonly about: ProofSubject | readonly ProofSubject[];
  /** Stations whose pictures are named as its proof; all stations by default, none if empty. */
  readonly stationIds?: readonly string[];
}

/** Whether the pictures show what a claim is about. That they show it does not say that it is right: someone looks. */
export interface Proof {
  readonly id: string;
  /** `shown`: enough of every part; `partly-shown`: some of it; `not-shown`: none of it. */
  readonly verdict: 'shown' | 'partly-shown' | 'not-shown';
  /** Share of the whole that is shown, by area or length, 0..1. */
  readonly share: number;
  readonly missing: readonly MissingProof[];
  /** Stations that show any of it. */
  readonly stations: readonly string[];
  readonly notices: readonly Notice[];
}

/** What counts as enough. Shares 0..1. */
export interface ProofOptions extends CoverageOptions {
  /** Of each wall, pier face, vent and bay; 0.9 by default. Common practice, no source. */
  readonly enoughOfLine?: number;
  /** Of the floor; 0.98 by default, which leaves room for the cells along walls. Common practice, no source. */
  readonly enoughOfFloor?: number;
}

/**
 * Whether each claim or finding has its proof among the pictures.
 * @throws EngineError as `coverage`, and `out-of-range` for shares outside 0..1
 */
export function proofOf(
  scene: CoverageScene,
  stations: readonly Station[],
  claims: readonly Claim[],
  options: ProofOptions = {},
): Proof[] {
  const seen = lookAround(scene, stations, options);
  const enough: Enough = {
    line: requireRange('share of a line that is enough', options.enoughOfLine ?? 0.9, 0, 1),
    floor: requireRange('share of the floor that is enough', options.enoughOfFloor ?? 0.98, 0, 1),
  };
  const floorFrom = floorSeenFrom(seen.compiled, options.maxIncidenceDeg ?? MAX_INCIDENCE_DEG);
  return claims.map((claim) => {
    const named = claim.stationIds && new Set(claim.stationIds);
    const witnesses = named ? seen.stations.filter((s) => named.has(s.station.id)) : seen.stations;
    const notices: Notice[] = [];
    const unknown = [...(named ?? [])].filter((id) => !stations.some((s) => s.id === id));
    if (unknown.length > 0) {
      notices.push({
        code: 'unknown-station',
        message: `Named as proof, but without a place and direction on the plan: ${unknown.join(', ')}.`,
      });
    }
    const parts = [claim.about].flat().flatMap((about) => partsOf(seen, witnesses, about, enough, floorFrom));
    if (parts.length === 0) {
      notices.push({
        code: 'nothing-to-show',
        message: 'The plan holds nothing of the kind that this is about, so no picture can show it.',
      });
    }
    return { id: claim.id, ...judge(parts, witnesses), notices };
  });
}

function judge(parts: readonly Part[], witnesses: readonly StationSeen[]): Omit<Proof, 'id' | 'notices'> {
  let size = 0;
  let shown = 0;
  const stations = new Set<string>();
  for (const part of parts) {
    size += part.size;
    shown += part.size * part.missing.share;
    for (const id of part.stations) stations.add(id);
  }
  const missing = parts.filter((part) => part.missing.share < part.needed).map((part) => part.missing);
  const all = parts.length > 0 && missing.length === 0;
  return {
    verdict: all ? 'shown' : shown > 0 ? 'partly-shown' : 'not-shown',
    share: size > 0 ? shown / size : 0,
    missing,
    stations: witnesses.map((s) => s.station.id).filter((id) => stations.has(id)),
  };
}
