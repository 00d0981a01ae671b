import { BASES, EASE_CATEGORIES, LENGTHS, NECKLINES, OPENING_PLACES, SILHOUETTES } from '#fit';
import { CONSTRUCTIONS } from '#garment';
import { number, objectOf, oneOf, orNull, text } from './json-schema.ts';
import { codeAndParams } from './message-schema.ts';

const fraction = { minimum: 0, maximum: 1 };

const easeSchema = objectOf(
  'Ease at the chest; lengths in the sheet’s unit.',
  {
    category: orNull(oneOf('The chosen band of ease; null for a plain number.', EASE_CATEGORIES)),
    place: orNull(number('Where in the band: 0 its closer end, 1 its looser.', fraction)),
    chosen: orNull(
      number('Chosen ease, said for an ordinary fabric and no extra layer; null where only a garment is known.'),
    ),
    tableTerms: orNull(
      number('Ease of the garment as advised, thickness and layer taken off: to compare with ease tables.'),
    ),
    lies: orNull(text('Which band the garment as advised lies in, in words.')),
    liesCode: { ...codeAndParams.code, description: 'What lies says: stable, lower-case with hyphens.' },
    liesParams: { ...codeAndParams.params, description: 'The values in lies, by name.' },
    flat: orNull(number('Twice the chest width less the chest girth.')),
    room: orNull(number('The gap really left inside: inner girth less chest girth and layer.')),
    chanceOfBand: orNull(number('Probability that the finished garment lies in the chosen band.', fraction)),
  },
  ['liesCode', 'liesParams'],
);

export const designSchema = objectOf('What was chosen, and what it came to.', {
  silhouette: oneOf('The kind of garment.', SILHOUETTES),
  construction: oneOf('How sleeve and body meet.', CONSTRUCTIONS),
  length: oneOf('How long it is.', LENGTHS),
  neckline: oneOf('The shape of the neck.', NECKLINES),
  basis: oneOf('What the dimensions come from: the body, a garment that fits, or both.', BASES),
  opening: objectOf('Where the neck opens.', {
    at: oneOf('Where; none for a neck that does not.', OPENING_PLACES),
    length: number('How far, at each place that opens, in the sheet’s unit; 0 for none.', { minimum: 0 }),
  }),
  ease: easeSchema,
});
