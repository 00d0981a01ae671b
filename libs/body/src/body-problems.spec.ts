import { describe, expect, it } from 'vitest';
import { BODY_DIMENSIONS } from './body-dimension.ts';
import { bodyProblems } from './body-problems.ts';
import { FIGURES, type Body, type BodyMeasure } from './body.ts';
import { humanLimits } from './human-limits.ts';
import { publishedSizes } from './sizes/size-tables.ts';

const body = (...measures: BodyMeasure[]): Body => ({ figure: 'woman', ageYears: null, measures });
const chest: BodyMeasure = { name: 'chest-girth', value: 940, how: 'home' };

describe('bodyProblems', () => {
  it('finds none in a sound body', () => {
    expect(bodyProblems(body(chest, { name: 'weight', value: 68_000, how: 'home', u: 500 }))).toEqual([]);
  });

  it.each<[string, Body, string, string]>([
    ['twice', body(chest, { ...chest, value: 950 }), 'measured-twice', '/measures/1/name'],
    ['not a number', body({ ...chest, value: NaN }), 'measure-out-of-range', '/measures/0/value'],
    ['endless', body({ ...chest, value: Infinity }), 'measure-out-of-range', '/measures/0/value'],
    ['negative', body({ ...chest, value: -940 }), 'measure-out-of-range', '/measures/0/value'],
    [
      'mm for cm',
      body(chest, { name: 'wrist-girth', value: 1600, how: 'home' }),
      'measure-out-of-range',
      '/measures/1/value',
    ],
    ['no doubt at all', body({ ...chest, u: 0 }), 'uncertainty-out-of-range', '/measures/0/u'],
    ['u not a number', body({ ...chest, u: NaN }), 'uncertainty-out-of-range', '/measures/0/u'],
    ['u of everything', body({ ...chest, u: 600 }), 'uncertainty-out-of-range', '/measures/0/u'],
    ['no such dimension', body({ ...chest, name: '__proto__' as 'weight' }), 'unknown-dimension', '/measures/0/name'],
    ['no such way', body({ ...chest, how: 'scan' as 'home' }), 'unknown-how', '/measures/0/how'],
    ['no such figure', { ...body(chest), figure: 'cat' as 'woman' }, 'unknown-figure', '/figure'],
    ['a woman of three', { ...body(chest), ageYears: 3 }, 'age-out-of-range', '/ageYears'],
    ['age not a number', { ...body(chest), ageYears: NaN }, 'age-out-of-range', '/ageYears'],
  ])('%s', (_, wrong, code, pointer) => {
    expect(bodyProblems(wrong)).toMatchObject([{ code, pointer }]);
  });

  it('finds every wrong measure at once, and says what would be right', () => {
    const problems = bodyProblems(body({ ...chest, value: 9.4 }, { name: 'weight', value: 68, how: 'home' }));
    expect(problems.map(({ pointer }) => pointer)).toEqual(['/measures/0/value', '/measures/1/value']);
    expect(problems[0]!.params).toEqual({
      name: 'chest-girth',
      figure: 'woman',
      value: 9.4,
      smallest: 550,
      largest: 2200,
      unit: 'mm',
    });
  });

  it('takes inches typed as centimetres and half girths, so that they can be asked about', () => {
    expect(bodyProblems(body({ ...chest, value: 370 }))).toEqual([]); // 37 in typed as 37 cm
    expect(bodyProblems(body({ ...chest, value: 470 }))).toEqual([]); // half of 940
    expect(bodyProblems(body({ ...chest, value: 94 * 25.4 }))).toEqual([]); // 94 cm typed as inches
  });
});

describe('humanLimits', () => {
  it('are in order, and hold every published size of the figure', () => {
    for (const figure of FIGURES) {
      for (const name of BODY_DIMENSIONS) {
        const [smallest, largest] = humanLimits(figure, name);
        expect(smallest).toBeLessThan(largest);
      }
    }
    for (const { figure, rows, id } of publishedSizes()) {
      if (id === 'head-girth-by-age') continue; // babies and children in one table
      for (const { mm, label } of rows) {
        for (const name of BODY_DIMENSIONS) {
          const range = mm[name];
          if (range === undefined) continue;
          const [smallest, largest] = humanLimits(figure, name);
          expect(range.low, `${label} ${name}`).toBeGreaterThan(smallest);
          expect(range.high, `${label} ${name}`).toBeLessThan(largest);
        }
      }
    }
  });
});
