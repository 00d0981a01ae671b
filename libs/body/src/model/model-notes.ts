import type { BodyNote } from '../note-codes.ts';

/** The youngest and the oldest whom the surveys of soldiers hold, years. */
export const YOUNGEST = 17;
export const OLDEST = 58;

/** What has to stand beside every estimate: whom the model was made from, and whom not. */
export const BODY_MODEL_MADE_FROM: BodyNote = {
  code: 'body-model-made-from',
  params: { youngest: YOUNGEST, oldest: OLDEST },
  source: { code: 'surveys', params: {} },
};

/** Beside the estimates for a body older than that. */
export const BEYOND_THE_OLDEST: BodyNote = {
  code: 'body-model-age',
  params: { oldest: OLDEST },
  source: { code: 'surveys', params: {} },
};
