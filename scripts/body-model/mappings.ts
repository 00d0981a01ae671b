import type { Mapping } from '#body';
import type { MeasureName, Sex } from './names.ts';

/**
 * Where the survey's measure is not the trade's. Every other dimension is the survey's as it is.
 * The uncertainty that stays with each is in mapping-uncertainties.ts.
 */
export const MAPPINGS: readonly Mapping[] = [
  {
    name: 'across-back',
    from: 'biacromial breadth, a straight caliper',
    scale: 1,
    offset: { woman: 35, man: 23 },
    reason:
      'The trade’s tape runs from shoulder point to shoulder point over the curve of the back, which is longer than the straight line. The offset takes the mean of a bust of 940 (365) and a chest of 991 (402) to the published cross back of size M (400, 425).',
    source: 'Craft Yarn Council, Standards & Guidelines, woman M and man M (from memory)',
  },
  {
    name: 'nape-to-cuff',
    from: 'half of across-back, and the sleeve outseam',
    scale: 1,
    offset: { woman: 0, man: 0 },
    reason: 'The survey’s spine to wrist is taken with the arm raised and bent and is about 90 longer.',
    source: 'assumed; agrees with the Council’s woman M (737–749, from memory)',
  },
  {
    name: 'underarm-length',
    from: 'upper arm and forearm lengths, less the height of the shoulder point over the armpit',
    scale: 1,
    offset: { woman: -25, man: -25 },
    reason: 'The trade starts about an inch below the armpit.',
    source: 'practice, from memory; agrees with the Council’s size M (432 and 470, from memory)',
  },
  {
    name: 'upper-arm-girth',
    from: 'axillary arm girth, relaxed, as high as it goes',
    scale: 0.985,
    offset: { woman: 0, man: 0 },
    reason:
      'The trade measures the fullest place, somewhere from the armpit to the middle of the upper arm. At the middle, civilians of 18 to 45 of the same stature and weight have 3 % less (both sexes); half of that is taken off.',
    source: 'ANSUR 1988 against NHANES 2017–2020',
  },
  {
    name: 'back-waist-length',
    from: 'the mean of nape to natural waist and nape to navel',
    scale: 1,
    offset: { woman: 0, man: 0 },
    reason:
      'Three places are called the waist: the narrowest (women 367), the navel (443), and the trade’s (438 for size M). The middle of the first two is taken, with a doubt that admits all three.',
    source: 'assumed',
  },
  {
    name: 'front-waist-length',
    from: 'neck to bust point along the body, then straight down to midway between natural waist and navel',
    scale: 1,
    offset: { woman: 0, man: 0 },
    reason:
      'The trade’s front waist runs from the side of the neck over the bust, so that front less back is the length a full bust takes. It ends at the same waist as the back waist.',
    source: 'assumed',
  },
  {
    name: 'waist-to-hip',
    from: 'navel to hip, and half of natural waist to navel',
    scale: 1,
    offset: { woman: 0, man: 0 },
    reason: 'From the same waist as the back waist, so that back waist and waist to hip add up to the back hip length.',
    source: 'assumed',
  },
  {
    name: 'back-hip-length',
    from: 'nape to navel, and navel to the fullest hip',
    scale: 1,
    offset: { woman: 0, man: 0 },
    reason: 'Both surveys have it by way of the navel; the level of the waist drops out.',
    source: 'derived',
  },
  {
    name: 'forearm-girth',
    from: 'forearm girth with the fist clenched',
    scale: 0.95,
    offset: { woman: 0, man: 0 },
    reason:
      'A relaxed forearm is thinner: people of two other sources, measured so, have 14 to 18 less than a clenched fist of such an arm, about 5 %.',
    source: 'assumed',
  },
];

const AS_SURVEYED = { scale: 1, offset: 0 };

export function mappingOf(name: MeasureName, sex: Sex): { readonly scale: number; readonly offset: number } {
  const mapping = MAPPINGS.find((one) => one.name === name);
  return mapping === undefined ? AS_SURVEYED : { scale: mapping.scale, offset: mapping.offset[sex] };
}
