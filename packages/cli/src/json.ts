import type { Assessment } from '@undercroft/assessment';

/** JSON would turn what is no finite number into null without a word; that would be a fault of ours, so it ends here. */
function onlyFinite(key: string, value: unknown): unknown {
  if (typeof value === 'number' && !Number.isFinite(value)) {
    throw new Error(`"${key}" is ${value}, which JSON cannot hold`);
  }
  return value;
}

/**
 * JSON text of plain data, indented by two.
 * @throws Error when a number in it is not finite
 */
export function jsonText(data: unknown): string {
  return JSON.stringify(data, onlyFinite, 2);
}

/** JSON of an assessment. Where taped walls close exactly, their precision is infinite and is left out. */
export function assessmentJson(assessment: Assessment): string {
  const { geometry } = assessment;
  if (geometry.closure === undefined || Number.isFinite(geometry.closure.precision)) {
    return jsonText(assessment);
  }
  const { precision: _, ...closure } = geometry.closure;
  return jsonText({ ...assessment, geometry: { ...geometry, closure } });
}
