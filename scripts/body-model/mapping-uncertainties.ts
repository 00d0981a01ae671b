import type { BodyDimension, MappingUncertainty } from '#body';

/** An uncertainty in millimetres: each dimension moves by its own number when the hidden number moves by one. */
interface UncertaintyMm {
  readonly because: string;
  readonly mm: Readonly<Partial<Record<BodyDimension, number>>>;
}

/**
 * The mappingUncertainties of the mappings, as standard deviations in mm. The waist lies anywhere from the natural waist to the navel: a rectangular
 * distribution, half-width / √3 (JCGM 100:2008, 4.3.7), halves 38 (women) and 33 (men) from ANSUR 1988; 20 admits both. The others are assumed; nape to
 * cuff also admits the Council's rows, which are 12 (woman M) to 95 (man XXL) longer than what the surveys say of such a chest.
 */
const MAPPING_UNCERTAINTIES: readonly UncertaintyMm[] = [
  {
    because: 'which of three places is called the waist',
    mm: { 'back-waist-length': 20, 'front-waist-length': 20, 'waist-to-hip': -20 },
  },
  { because: 'how far the back is curved', mm: { 'across-back': 14, 'nape-to-cuff': 7 } },
  { because: 'how the tape lies over the shoulder and along the arm', mm: { 'nape-to-cuff': 16 } },
  { because: 'how far below the armpit the tape starts', mm: { 'underarm-length': 8 } },
  { because: 'how high on the arm the tape goes', mm: { 'upper-arm-girth': 3 } },
  { because: 'how much the clenched fist adds', mm: { 'forearm-girth': 5 } },
  { because: 'how far the front tape follows the body below the bust', mm: { 'front-waist-length': 8 } },
];

/** The mappingUncertainties as moves of the logarithms, given each dimension's mean in mm. */
export function mappingUncertaintiesAround(meanMm: (name: BodyDimension) => number): MappingUncertainty[] {
  return MAPPING_UNCERTAINTIES.map(({ because, mm }) => ({
    because,
    logSd: Object.fromEntries(Object.entries(mm).map(([name, sd]) => [name, sd / meanMm(name as BodyDimension)])),
  }));
}
