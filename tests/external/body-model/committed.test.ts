import { readFileSync } from 'node:fs';
import { expect, it } from 'vitest';
import { buildModel } from '../../../scripts/body-model/build-model.ts';
import { modelText } from '../../../scripts/body-model/model-text.ts';
import { describeWithRows } from './survey-rows.ts';

const FILE = new URL('../../../libs/body/src/model/coefficients.json', import.meta.url);

describeWithRows('the committed coefficients', (rows) => {
  const text = modelText(buildModel(rows));
  const committed = readFileSync(FILE, 'utf8');

  it('come out the same twice', () => {
    expect(modelText(buildModel(rows))).toBe(text);
  });

  /** Other rows of the same surveys make other numbers: the comparison is for the rows the file says it was made from. */
  const people = (file: string) => JSON.stringify((JSON.parse(file) as { sources: unknown }).sources);
  it.skipIf(people(text) !== people(committed))('are what `npm run build:body-model` makes of these rows', () => {
    expect(text).toBe(committed);
  });

  it('hold no row: nothing but numbers of the model, under 60 kB', () => {
    expect(committed.length).toBeLessThan(60_000);
  });
});
