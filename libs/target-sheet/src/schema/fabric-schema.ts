import { THICKNESS_SOURCES } from '#fabric';
import { number, objectOf, oneOf, orNull, type JsonSchema } from './json-schema.ts';

const directions = (description: string, of: string): JsonSchema =>
  objectOf(description, { across: number(`Along a row of stitches: ${of}.`), along: number(`Up the rows: ${of}.`) });

export const fabricSchema = objectOf('The fabric it is made in.', {
  thickness: number('Of one layer, in the sheet’s unit.', { minimum: 0 }),
  u: number('Standard uncertainty of the thickness, in the sheet’s unit.', { minimum: 0 }),
  from: oneOf('Where the thickness is from, most trusted first.', THICKNESS_SOURCES),
  stretch: orNull(directions('How far the main fabric pulls; null where unmeasured.', '(pulled − at rest) ÷ at rest')),
  growth: orNull(
    directions('How much it grows in the wash; null without a swatch, taken as none.', '(washed − before) ÷ before'),
  ),
});
