export * as ground from './ground/index.ts';
export type { EngineErrorCode } from './numerics/engine-error.ts';
export { EngineError } from './numerics/engine-error.ts';
export type { Figure, Notice } from './numerics/notice.ts';
export type { Ending } from './numerics/solution.ts';
export * as psychrometrics from './psychrometrics/index.ts';
export type { Provenance, Source } from './sources/source.ts';
export * as wood from './wood/index.ts';
