export { Evaluation, type InputUncertainty } from './evaluation.ts';
export { Layout } from './layout.ts';
export { roundingRange, type Leeway } from './rounding-range.ts';
