/** Advice with its texts, for tests of the words. */
import type { Tape } from '#advice-text';
import { advise, type FitRequest } from '#fit';
import { withText, type AdviceInWords } from '#target-sheet';
import { requestOf, type Differs } from './fit-samples.ts';

export const inWords = (request: FitRequest, tape: Tape = 'cm'): AdviceInWords => withText(advise(request), { tape });

export const adviceInWords = (differs: Differs = {}, tape?: Tape): AdviceInWords => inWords(requestOf(differs), tape);
