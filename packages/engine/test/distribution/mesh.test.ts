import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { fieldMesh } from '../../src/distribution/mesh.ts';
import { nearestCell, placeCells } from '../../src/distribution/places.ts';
import type { Point } from '../../src/geometry/point.ts';
import { polygonAreaM2 } from '../../src/geometry/polygon-area.ts';
import { EngineError } from '../../src/numerics/engine-error.ts';
import { rectangle } from './worked-plan.ts';

/** An L, turned. */
function turnedL(turnDeg: number): Point[] {
  const turn = (turnDeg * Math.PI) / 180;
  return [
    [0, 0],
    [11.3, 0],
    [11.3, 4.7],
    [6.1, 4.7],
    [6.1, 9.2],
    [0, 9.2],
  ].map(([x, y]) => ({
    xM: x! * Math.cos(turn) - y! * Math.sin(turn) + 31,
    yM: x! * Math.sin(turn) + y! * Math.cos(turn) - 17,
  }));
}

describe('mesh', () => {
  it.each([0, 17, 45, 90, 133])(
    'turned by %d degrees: the floor keeps its area and its walls their length',
    (turn) => {
      const outline = turnedL(turn);
      const mesh = fieldMesh({ outline, heightM: 0.7 }, 0.25);
      // What is left out are slivers of less than a thousandth of a cell.
      expect(Math.abs(mesh.floorM2 / polygonAreaM2(outline) - 1)).toBeLessThan(1e-5);
      expect(mesh.volumeM3).toBeCloseTo(0.7 * mesh.floorM2, 9);
      const walls = placeCells(mesh, { kind: 'walls' }, 'walls');
      expect(walls.total).toBeCloseTo(2 * (11.3 + 9.2), 6);
      // One joined space: no cell is cut off by the stairs of a slanting wall.
      expect(mesh.bayVolumeM3.filter((v) => v > 0.01 * mesh.volumeM3)).toHaveLength(1);
    },
  );

  it('either way round is the same floor', () => {
    const outline = turnedL(17);
    const there = fieldMesh({ outline, heightM: 0.7 }, 0.25);
    const back = fieldMesh({ outline: [...outline].reverse(), heightM: 0.7 }, 0.25);
    expect(back.floorM2).toBeCloseTo(there.floorM2, 9);
    expect(placeCells(back, { kind: 'walls' }, 'walls').cells).toEqual(
      placeCells(there, { kind: 'walls' }, 'walls').cells,
    );
  });

  it('the grid fits a rectangle that no whole number of cells makes up', () => {
    const mesh = fieldMesh({ outline: rectangle(12.19, 8.53), heightM: 0.9 }, 0.25);
    expect(mesh.grid.cellXM).toBeLessThanOrEqual(0.25);
    expect(mesh.grid.cellXM * mesh.grid.columns).toBeCloseTo(12.19, 12);
    expect(mesh.floorM2).toBeCloseTo(12.19 * 8.53, 9);
    expect(mesh.count).toBe(mesh.grid.columns * mesh.grid.rows);
  });

  it('piers take their footprint, wherever they stand', () => {
    fc.assert(
      fc.property(
        fc.double({ min: 1, max: 7, noNaN: true }),
        fc.double({ min: 1, max: 5, noNaN: true }),
        fc.double({ min: 0, max: 360, noNaN: true }),
        fc.double({ min: 0.1, max: 0.9, noNaN: true }),
        (xM, yM, turnDeg, widthM) => {
          const mesh = fieldMesh(
            {
              outline: rectangle(8, 6),
              heightM: 0.8,
              piers: [{ id: 'p', at: { xM, yM }, widthM, depthM: 0.4, turnDeg }],
            },
            0.25,
          );
          // Up to a thousandth of a cell is left out wherever the pier's side runs.
          expect(Math.abs(mesh.floorM2 - (48 - widthM * 0.4))).toBeLessThan(2e-3);
        },
      ),
      { numRuns: 40 },
    );
  });

  it('an obstacle of known height leaves less room, one of unknown height none', () => {
    const outline = [
      { xM: 2, yM: 2 },
      { xM: 4, yM: 2 },
      { xM: 4, yM: 3 },
      { xM: 2, yM: 3 },
    ];
    const low = fieldMesh({
      outline: rectangle(8, 6),
      heightM: 0.8,
      obstacles: [{ id: 'o', outline, heightM: 0.3 }],
    });
    expect(low.floorM2).toBeCloseTo(48, 9);
    expect(low.volumeM3).toBeCloseTo(0.8 * 46 + 0.5 * 2, 9);
    const high = fieldMesh({ outline: rectangle(8, 6), heightM: 0.8, obstacles: [{ id: 'o', outline }] });
    expect(high.floorM2).toBeCloseTo(46, 9);
  });

  it('bays part where less than half the height is open', () => {
    const at = (clearanceM: number) =>
      fieldMesh({
        outline: rectangle(8, 6),
        heightM: 0.8,
        ducts: [
          {
            id: 'd',
            path: [
              { xM: 4, yM: 0 },
              { xM: 4, yM: 6 },
            ],
            widthM: 0.3,
            clearanceM,
          },
        ],
      }).bayVolumeM3;
    expect(at(0.41)).toHaveLength(1);
    expect(at(0.4)).toHaveLength(1);
    expect(at(0.39)).toHaveLength(2);
    expect(at(0.39)[0]).toBeCloseTo(19.2, 9);
  });

  it('heights taken at places vary over the floor', () => {
    const mesh = fieldMesh({
      outline: rectangle(8, 6),
      clearHeights: [
        { at: { xM: 0.125, yM: 3.125 }, clearHeightM: 0.5 },
        { at: { xM: 7.875, yM: 3.125 }, clearHeightM: 1.1 },
      ],
    });
    expect(mesh.heightM[nearestCell(mesh, { xM: 0.1, yM: 3.1 }, 0.1)]).toBeCloseTo(0.5, 9);
    expect(mesh.heightM[nearestCell(mesh, { xM: 7.9, yM: 3.1 }, 0.1)]).toBeCloseTo(1.1, 9);
  });

  it('zones share the floor with what is left of it', () => {
    const mesh = fieldMesh({ outline: turnedL(17), heightM: 0.7 }, 0.25);
    const zone = turnedL(17).slice(0, 4);
    const inside = placeCells(mesh, { kind: 'floor', within: zone }, 'zone');
    const outside = placeCells(mesh, { kind: 'floor', except: [zone] }, 'elsewhere');
    expect(inside.total + outside.total).toBeCloseTo(mesh.floorM2, 9);
    // Looked at in 25 places to a cell along its edge.
    expect(Math.abs(inside.total / polygonAreaM2(zone) - 1)).toBeLessThan(3e-3);
  });

  it('refuses what makes no sense', () => {
    const refuse = (run: () => unknown, message: RegExp) => {
      expect(run).toThrow(EngineError);
      expect(run).toThrow(message);
    };
    refuse(() => fieldMesh({ outline: rectangle(8, 6) }), /clear height/);
    refuse(() => fieldMesh({ outline: rectangle(8, 0), heightM: 0.8 }), /enclose an area/);
    refuse(() => fieldMesh({ outline: rectangle(8, 6), heightM: 0.8 }, 0.019), /side of a cell/);
    refuse(() => fieldMesh({ outline: rectangle(8000, 6000), heightM: 0.8 }, 0.02), /too many/);
    const mesh = fieldMesh({ outline: rectangle(8, 6), heightM: 0.8 });
    refuse(() => placeCells(mesh, { kind: 'at', at: { xM: 20, yM: 3 } }, 'leak'), /leak.*more than 1 m/);
  });
});
