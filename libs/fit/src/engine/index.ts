export { Evaluation, type InputUncertainty } from './evaluation.ts';
export { Layout } from './layout.ts';
export type { Perturbation } from './perturbation.ts';
export { NO_MARGIN, roundingRange, type Leeway } from './rounding-range.ts';
