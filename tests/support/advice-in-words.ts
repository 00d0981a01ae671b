/** Advice with its texts, for tests of the words. */
import { advise, type FitRequest } from '#fit';
import { withText, type AdviceInWords } from '#target-sheet';
import { requestOf, type Differs } from './fit-samples.ts';

export const inWords = (request: FitRequest): AdviceInWords => withText(advise(request), { tape: request.tape });

export const adviceInWords = (differs: Differs = {}): AdviceInWords => inWords(requestOf(differs));
