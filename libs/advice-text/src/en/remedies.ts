import type { RemedyCodes } from '#fit';
import type { Catalogue, Reader } from '../catalogue.ts';
import { openPlace } from './openings.ts';
import { lengthWords } from '../length-words.ts';

const by =
  (before: string, after: string) =>
  ({ byMm }: { readonly byMm: number }, { tape }: Reader): string =>
    `${before} ${lengthWords(byMm, tape)} ${after}`;

/** Changes of the design, as on a button. */
export const remedies: Catalogue<RemedyCodes> = {
  'deeper-front-neck': by('Make the front neck', 'deeper'),
  'wider-neck': by('Make the neck', 'wider'),
  'narrower-neck': by('Make the neck', 'narrower'),
  'shallower-v': by('Make the V', 'shallower'),
  'shallower-bands': by('Make the bands', 'shallower'),
  'shallower-rib': by('Make the rib', 'shallower'),
  'wider-cuff': by('Make the cuff', 'wider'),
  'closer-cuff': by('Make the cuff', 'narrower'),
  'longer-body': by('Make the body', 'longer'),
  'more-ease': by('Choose', 'more ease'),
  'wider-round': by('Make it', 'wider round than now'),
  'straight-hem': () => 'Let the hem fall straight',
  'open-neck': (opens) => `Let the neck open ${openPlace(opens)}`,
};
