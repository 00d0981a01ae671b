import type { Choices } from '../design/choices.ts';
import type { Evaluation } from '../engine/index.ts';
import type { TracedModel } from '../tracing/traced-model.ts';

/** A garment evaluated: its choices, the model that they lead to, and every number of it. */
export interface Evaluated {
  readonly choices: Choices;
  readonly model: TracedModel;
  readonly evaluation: Evaluation;
}
