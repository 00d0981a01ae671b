import type { Closing, RemedyCodes } from '#fit';

type Beside = RemedyCodes['open-neck']['beside'];

/** Where a neck opens: at the seams of its shoulders or its raglans, or in the middle. */
const PLACES: Readonly<Record<RemedyCodes['open-neck']['at'], string | Readonly<Record<Beside, string>>>> = {
  shoulder: { armhole: 'at one shoulder', raglan: 'along one raglan seam' },
  shoulders: { armhole: 'at both shoulders', raglan: 'along a raglan seam on both sides' },
  back: 'at the back',
  front: 'at the front',
};

export function openPlace({ at, beside }: RemedyCodes['open-neck']): string {
  const place = PLACES[at];
  return typeof place === 'string' ? place : place[beside];
}

/** How an opening closes. */
export const closings: Readonly<Record<Closing, string>> = {
  buttons: 'close it with buttons',
  overlap: 'let the two edges overlap there, with no buttons to come off',
};
