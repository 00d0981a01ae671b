/** Common practice, no source: how much yarn a sweater takes. */
import { expect, it } from 'vitest';
import { composeSheet } from '#target-sheet';
import { exampleInput, knit, meta } from '../target-sheet/inputs.ts';

/** A thickness of 8 mm, the weight category 6 (super bulky), a small-to-medium woman's chest of 94 cm. */
const cropped = composeSheet(
  {
    ...exampleInput,
    fabric: { ...knit, thicknessMm: 8, weightCategory: 6 },
    design: { ...exampleInput.design, length: 'cropped' },
  },
  meta,
);

it('a small-to-medium adult’s cropped sweater in very thick yarn takes about 600 g, ± 20 %', () => {
  const { value } = cropped.yarn!.mass;
  expect(value).toBeGreaterThanOrEqual(0.8 * 600);
  expect(value).toBeLessThanOrEqual(1.2 * 600);
});

it('piece by piece it is the whole, and the tenth to spare is said beside it', () => {
  const { yarn } = cropped;
  expect(yarn!.pieces.reduce((sum, { mass }) => sum + mass.value, 0)).toBeCloseTo(yarn!.mass.value, 6);
  expect(yarn!.from).toMatch(/^rough: /);
  expect(yarn!.spare.text).toBe(
    `Have about ${Math.round(yarn!.mass.value / 10)} g more, 10 %, for the swatch and the ends: it is not counted in.`,
  );
});
