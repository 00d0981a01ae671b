import type { Estimator } from '../estimator.ts';
import { bodyFromEvidence, type BodyFromEvidence, type EvidenceInput } from '../evidence/body-from-evidence.ts';
import { bodyModelEstimator } from './body-model-estimator.ts';
import type { BodyModelCoefficients } from './coefficients.ts';
import { bodyQuestioner, type Question, type QuestionsInput } from './questions.ts';

/** The body model ready for use: estimates, questions, bodies from evidence, and the coefficients they rest on. */
export interface BodyModel extends Estimator {
  readonly coefficients: BodyModelCoefficients;
  questionsOf(input: QuestionsInput): readonly Question[];
  fromEvidence(input: EvidenceInput): BodyFromEvidence;
}

/** Loads the committed coefficients; imported only here, and dynamically, so that a page gets them as a file of their own. */
export async function loadBodyModel(): Promise<BodyModel> {
  const { default: json } = await import('./coefficients.json', { with: { type: 'json' } });
  const coefficients = json as unknown as BodyModelCoefficients;
  return {
    coefficients,
    estimate: bodyModelEstimator(coefficients).estimate,
    questionsOf: bodyQuestioner(coefficients),
    fromEvidence: bodyFromEvidence(coefficients),
  };
}
