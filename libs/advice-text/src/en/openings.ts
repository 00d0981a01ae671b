import type { Closing, OpeningPlace } from '#fit';

/** Where a neck opens. */
export const openPlaces: Readonly<Record<Exclude<OpeningPlace, 'none'>, string>> = {
  shoulder: 'at one shoulder',
  shoulders: 'at both shoulders',
  back: 'at the back',
  front: 'at the front',
};

/** How an opening closes. */
export const closings: Readonly<Record<Closing, string>> = {
  buttons: 'close it with buttons',
  overlap: 'let the front and back overlap there, with no buttons to come off',
};
