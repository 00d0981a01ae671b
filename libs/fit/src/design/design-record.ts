import { CONSTRUCTIONS, LAYER_RECORD } from '#garment';
import { chosenFields, type RecordOf, type RecordSchema, type StoredRecord } from '#measure';
import { BASES, EASE_CATEGORIES, EASES_AS, HEMS, LENGTHS, NECKLINES, OPENING_PLACES, SILHOUETTES } from './design.ts';

/** A chosen length on a garment, finished: a band, a rib, a neck. */
export const CHOSEN_LENGTH_RECORD = chosenFields({
  quantity: 'length',
  limits: { min: 0, max: 3000, words: 'from 0 to 3 m' },
}) satisfies RecordSchema;

const DIFFERENCE = { quantity: 'difference', limits: { min: -1000, max: 2000, words: 'from -1 m to 2 m' } } as const;

/** A difference in girth: negative where the new one is to be smaller. */
export const GIRTH_DIFFERENCE_RECORD = chosenFields(DIFFERENCE) satisfies RecordSchema;

/** Ease as a category and a place in it. */
export const EASE_BAND_RECORD = {
  category: { kind: 'choice', of: EASE_CATEGORIES },
  place: {
    kind: 'number',
    min: 0,
    max: 1,
    optional: true,
    default: 0.5,
    description: '0 the closer end of the category, 1 its looser.',
  },
} as const satisfies RecordSchema;

/** Ease as garments have it: the one that is the basis, with a change, or on average those that she likes to wear. */
export const EASE_AS_RECORD = {
  as: { kind: 'choice', of: EASES_AS },
  change: {
    kind: 'record',
    fields: GIRTH_DIFFERENCE_RECORD,
    optional: true,
    description: 'Of `garment`: how much more; default 0.',
  },
} as const satisfies RecordSchema;

/** Ease as a difference in girth. */
export const EASE_GIRTH_RECORD = chosenFields({ ...DIFFERENCE, orGiven: ['as', 'category'] }) satisfies RecordSchema;

const length = <const D extends string>(description: D) =>
  ({ kind: 'record', fields: CHOSEN_LENGTH_RECORD, optional: true, description }) as const;

/** Where a neck opens. */
export const OPENING_RECORD = {
  at: { kind: 'choice', of: OPENING_PLACES },
  length: {
    kind: 'record',
    fields: CHOSEN_LENGTH_RECORD,
    optional: true,
    description: 'Of each place that opens; default: as far as the head needs.',
  },
} as const satisfies RecordSchema;

/** What the maker chose. What she leaves out, the rules decide. */
export const DESIGN_RECORD = {
  silhouette: { kind: 'choice', of: SILHOUETTES },
  construction: { kind: 'choice', of: CONSTRUCTIONS },
  length: {
    kind: 'choice',
    of: LENGTHS,
    optional: true,
    description: 'Default: that of the garment that is the basis, where it was measured, else regular.',
  },
  neckline: { kind: 'choice', of: NECKLINES },
  basis: {
    kind: 'choice',
    of: BASES,
    optional: true,
    description: 'Where the targets come from; default: `both` where a garment with a chest width fits, else `body`.',
  },
  hem: {
    kind: 'choice',
    of: HEMS,
    optional: true,
    description: 'Default: straight; tapered where the hip asks for more than the chest of the garment that is kept.',
  },
  ease: {
    kind: 'either',
    given: { as: EASE_AS_RECORD, category: EASE_BAND_RECORD },
    missing: EASE_GIRTH_RECORD,
    optional: true,
    description: 'Default: that of the garment that is the basis, else classic in its middle.',
  },
  layer: {
    kind: 'record',
    fields: LAYER_RECORD,
    optional: true,
    description: 'What will be worn beneath, beyond a shirt.',
  },
  customLength: length('Centre-back length of a custom length: finished back neck edge to hem.'),
  opening: {
    kind: 'record',
    fields: OPENING_RECORD,
    optional: true,
    description: 'Default: none where the head passes without; else at a shoulder, at both, or at the back.',
  },
  band: length('Depth of the neck band, and of a vest’s armhole bands.'),
  frontBand: length('Width of a cardigan’s front band.'),
  overlap: length('How far a cardigan’s front bands overlap; default: their width.'),
  rib: length('Depth of the rib at hem and cuff.'),
  cuffWidth: length('The maker’s own cuff, finished: its flat width.'),
  neckWidth: length('The maker’s own neck, finished: its width.'),
  frontNeckDepth: length('The maker’s own neck, finished: its depth in front.'),
  backNeckDepth: length('The maker’s own neck, finished: its depth at the back.'),
  seamAllowance: length('Added at each joined edge of a piece; default none.'),
} as const satisfies RecordSchema;

/** A design as a maker gives it, and as it is stored. */
export type DesignRecord = RecordOf<typeof DESIGN_RECORD>;
export type StoredDesign = StoredRecord<typeof DESIGN_RECORD>;
