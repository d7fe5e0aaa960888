/**
 * How well a source is known to this project. `read`: its text was opened. `quoted`: seen in somebody's quotation.
 * `memory`: recalled, believed to stand there, not opened. `computed`: worked out from equations given here.
 * `practice`: trade habit, no published source.
 */
export type Provenance = 'read' | 'quoted' | 'memory' | 'computed' | 'practice';

/** A publication, standard or habit that a figure leans on. */
export interface Source {
  /** Short stable id, e.g. `wood-handbook-2021-ch4`. */
  readonly id: string;
  /** Author or publisher, title, edition, year, section. */
  readonly citation: string;
  readonly provenance: Provenance;
}
