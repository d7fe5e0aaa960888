import type { FieldModel } from './field-model.ts';
import type { SourceKind } from './field-site.ts';
import { laneSums } from './lane-vectors.ts';
import { LANES } from './lanes.ts';

/**
 * The same model with the exchanges of some kinds made stronger or weaker. Grids and room to work in are shared: solve one
 * of them at a time.
 * @param factor above 0
 */
export function scaledSources(model: FieldModel, kinds: readonly SourceKind[], factor: number): FieldModel {
  const loss = model.loss.slice();
  const waterGiven = model.waterGiven.slice();
  const vapor = model.vapor.map((exchange) => {
    if (!kinds.some((kind) => kind === exchange.kind)) return exchange;
    const { cells, conductance, drawnTo } = exchange;
    for (let k = 0; k < cells.length; k += 1) {
      const more = (factor - 1) * conductance[k]!;
      const at = LANES * cells[k]!;
      loss[at] = loss[at]! + more;
      loss[at + 1] = loss[at + 1]! + more;
      waterGiven[cells[k]!] = waterGiven[cells[k]!]! + more * drawnTo;
    }
    return { ...exchange, conductance: conductance.map((c) => factor * c) };
  });
  const totals = {
    loss: new Float64Array(LANES),
    waterGiven: waterGiven.reduce((sum, given) => sum + given, 0),
  };
  laneSums(loss, totals.loss);
  return { ...model, loss, waterGiven, vapor, totals };
}
