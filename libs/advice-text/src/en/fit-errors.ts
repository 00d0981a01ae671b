import type { FitErrors, MadeUnfit } from '#fit';
import type { Catalogue } from '../catalogue.ts';

const UNFIT: Readonly<Record<MadeUnfit, string>> = {
  'front-of-cardigan': 'a cardigan; say left-front or right-front',
  'half-front': 'this silhouette; say front',
  'sleeve-of-vest': 'a vest, which has no sleeves',
  'cap-without-set-in': 'this construction; only a set-in sleeve has a cap',
  'sleeve-raglan-without-raglan': 'this construction; only a raglan has one',
  'armhole-of-raglan': 'a raglan; say raglan-depth',
  'raglan-without-raglan': 'this construction; say armhole-depth',
};

/** What is wrong with what the advice is asked for. */
export const fitErrors: Catalogue<FitErrors> = {
  'rule-unknown': ({ name }) => `There is no rule "${name}"; the rule table lists them all.`,
  'rule-out-of-range': (params) => {
    if ('name' in params) {
      const { name, value, min, max, unit } = params;
      return `Rule "${name}" was given ${value}; it takes ${min} to ${max}${unit === 'mm' ? ' mm' : ''}.`;
    }
    const { from, to, fromValue, toValue } = params;
    return `Rules "${from}" and "${to}" were ${fromValue} and ${toValue}; what begins a band of ease lies below its end.`;
  },
  'made-unknown': ({ name, known }) =>
    `A finished piece's "${name}" cannot be taken in; these can: ${known.join(', ')}.`,
  'made-unfit': ({ name, why }) => `A finished "${name}" does not go with ${UNFIT[why]}.`,
  'made-twice': ({ name, earlierMm }) =>
    `"${name}" fixes what an earlier entry already gave as ${earlierMm} mm; keep one of them.`,
  'garment-missing': ({ for: what }) =>
    what === 'ease'
      ? 'The ease of a garment needs a garment that fits.'
      : `The basis "${what}" needs a garment that fits.`,
  'garment-length-missing': () =>
    'A length as the garment has it needs its shoulder to hem: measure that, or choose another length.',
  'favourites-too-few': () =>
    'The ease of the garments that she likes needs at least two with a chest width, whose chest wears right.',
};
