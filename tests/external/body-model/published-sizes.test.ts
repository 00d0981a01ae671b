/**
 * Craft Yarn Council, Standards & Guidelines for Crochet and Knitting: the sizes that no survey holds, women 1X to 5X and men XL and XXL (from memory, a
 * practice). The chest alone is known, to half a size.
 */
import { expect, it } from 'vitest';
import { defaultU, loadBodyModel, resolveBody, rowBodyMeasures, sizeRow, sizeTable } from '#body';

const model = await loadBodyModel();

it.each([
  ['woman', ['1X', '2X', '3X', '4X', '5X'], 36, 40],
  ['man', ['XL', 'XXL'], 14, 16],
] as const)('%s: most published values of the largest sizes lie inside 90 %%', (figure, sizes, least, all) => {
  const table = sizeTable(`craft-yarn-council-${figure}`);
  const cells = sizes.flatMap((size) => {
    const measures = rowBodyMeasures(sizeRow(table, size));
    const known = measures
      .filter(({ name }) => name === 'chest-girth')
      .map((one) => ({ ...one, u: defaultU(one.name, 'table').u }));
    const { estimates } = model.estimate({ figure, ageYears: null, known });
    return measures.flatMap(({ name, value }) => {
      const one = estimates.find((estimate) => estimate.name === name);
      return one !== undefined && 'value' in one ? [value >= one.low && value <= one.high] : [];
    });
  });
  expect(cells).toHaveLength(all);
  expect(cells.filter(Boolean).length).toBeGreaterThanOrEqual(least);
});

it.each(
  (['woman', 'man', 'child', 'baby'] as const).flatMap((figure) =>
    sizeTable(`craft-yarn-council-${figure}`).rows.map((row) => [row.label, figure, row] as const),
  ),
)('%s: everything that a sweater rests on has a value', (_, figure, row) => {
  const body = { figure, ageYears: row.ageYears, measures: rowBodyMeasures(row) };
  const { values } = resolveBody(body, { estimate: true, estimator: model });
  const needed = [
    'chest-girth',
    'waist-girth',
    'hip-girth',
    'neck-base-girth',
    'across-back',
    'back-waist-length',
    'nape-to-cuff',
    'underarm-length',
    'scye-depth',
    'scye-girth',
    'upper-arm-girth',
    'forearm-girth',
    'wrist-girth',
    'hand-girth',
    'head-girth',
    'shoulder-girth',
  ] as const;
  for (const name of needed) {
    expect(values[name]?.value, name).toBeGreaterThan(0);
    expect(values[name]?.u, name).toBeGreaterThan(0);
  }
});
