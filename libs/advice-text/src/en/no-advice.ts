import type { NoAdviceCodes } from '#fit';
import type { Catalogue } from '../catalogue.ts';
import { say } from '../say.ts';
import { bodyMissing } from './body-missing.ts';
import { allOf } from './all-of.ts';
import { inWords } from './in-words.ts';

const NO_SLEEVE = 'No sleeve of this width joins the armhole';

/** Why a number has no value. */
export const noAdvice: Catalogue<NoAdviceCodes> = {
  measure: ({ measures, why }, reader) =>
    `Measure ${allOf(measures.map(inWords))}.${why === null ? '' : ` ${say(bodyMissing, why, reader)}`}`,
  'garment-measure-missing': () => 'A measure of the garment that fits is missing.',
  'no-shape-joins': () => 'No shape joins these edges; choose another construction.',
  'nothing-left': () => 'Nothing is left here; the checks say what to change.',
  'no-sleeve': ({ cure }) => {
    switch (cure) {
      case 'narrower-sleeve-again':
        return `${NO_SLEEVE}: work the sleeve again, narrower.`;
      case 'narrower-sleeve-or-deeper-armhole-again':
        return `${NO_SLEEVE}: make it narrower, or work the body again, with a deeper armhole.`;
      case 'squared-drop':
        return `${NO_SLEEVE}: choose a squared drop.`;
    }
  },
};
