import { describe, expect, it } from 'vitest';
import { bodyProblems } from '#body';
import { resolveFabric, type FabricInput } from '#fabric';
import type { FitErrors } from '#fit';
import { garmentProblems } from '#garment';
import { DomainError, lengthFrom, massFrom, parseLength, parseMass, type Params } from '#measure';
import { errorText } from './error-text.ts';
import type { TheirNameFault } from './planner-codes.ts';

function textOf(attempt: () => unknown): string {
  try {
    attempt();
  } catch (error) {
    return errorText(error as DomainError);
  }
  throw new Error('It was taken.');
}

describe('a text that is no length', () => {
  it.each([
    ['17 1/2', 'its unit is missing. Write 17 1/2 in, 44.5 cm or 445 mm.'],
    ['1,234 mm', 'it may be 1234 or 1.234; write the one you mean.'],
    ['17 12 in', 'it is more than one number; write one, such as 17 1/2 or 17.5.'],
    ['171/2 in', '171/2 is not a part of one; write a whole number, a space and a fraction, such as 17 1/2.'],
    ['1/0 in', 'nothing can be divided into 0 parts, as 1/0 says.'],
    ['5 cm 4 in', 'these numbers and units do not make one length. Write 17 1/2 in, 44.5 cm or 445 mm.'],
    ["5'12", 'the two numbers do not add up to one length. Write 17 1/2 in, 44.5 cm or 445 mm.'],
    ['-4 cm', 'a length is not less than nothing.'],
    ['', 'it is empty. Write 17 1/2 in, 44.5 cm or 445 mm.'],
    ['NaN', 'there is no number in it.'],
    ['1e308 mm', '“e” is not one of the units mm, cm, m, in, ft.'],
    ['10.01 m', 'it is more than 10 m; check the number and its unit.'],
  ])('%j: %s', (text, why) => {
    expect(textOf(() => parseLength(text))).toBe(`“${text}” was read as a length, but ${why}`);
  });

  it('is cut where it is too long', () => {
    const text = textOf(() => parseLength('4'.repeat(99)));
    expect(text).toMatch(/^“4{40}…” was read as a length, but it is longer than 40 characters\. Write 17/);
  });
});

it('says what is wrong with a mass', () => {
  expect(textOf(() => parseMass('62'))).toMatch(/its unit is missing\. Write 62 kg, 600 g, 140 lb or 11 st 4 lb\.$/);
  expect(textOf(() => parseMass('62 cm'))).toMatch(/“cm” is not one of the units g, kg, oz, lb, st\.$/);
  expect(textOf(() => massFrom(-1, 'kg'))).toBe('-1 kg is not a mass; a mass is not less than nothing.');
  expect(textOf(() => massFrom(1, 'st'))).toBe(
    '“st” is not a unit of mass here. Use g, kg or [lb_av] (lb is understood too).',
  );
});

it('says what is wrong with a number and its unit', () => {
  const tooLong = '10001 mm is not a length up to 10 m; check the number and its unit.';
  expect(textOf(() => lengthFrom(10_001, 'mm'))).toBe(tooLong);
  expect(textOf(() => lengthFrom(1, 'ell'))).toMatch(/Use mm, cm or \[in_i\]/);
});

it('says what is wrong with a body', () => {
  const chest = { name: 'chest-girth', value: 9.4, how: 'home' } as const;
  const texts = bodyProblems({ figure: 'woman', ageYears: 8, measures: [chest, chest] }).map((error) =>
    errorText(error),
  );
  expect(texts).toEqual([
    'Read an age of 8 years; for "woman" it lies between 12 and 120. For a younger body say child or baby.',
    'chest-girth: read 9.4 mm; a woman’s lies between 550 and 2200 mm.',
    'chest-girth is given twice; keep one of them.',
    'chest-girth: read 9.4 mm; a woman’s lies between 550 and 2200 mm.',
  ]);
});

it('says what is wrong with a garment', () => {
  const measures = [{ name: 'chest-width', value: 9, how: 'home', from: 'seam' }] as const;
  const garment = { construction: 'set-in', measures, thicknessMm: 3, thicknessU: 1, layer: null, wears: {} } as const;
  const texts = garmentProblems({
    ...garment,
    title: '',
    fits: null,
    neckline: null,
    sleeve: 'long',
    wornStretched: false,
  }).map((error) => errorText(error));
  expect(texts).toEqual([
    'Read 9 mm; it lies between 60 and 3000 mm.',
    'Only sleeve-length is measured from somewhere; chest-width is not.',
  ]);
});

it('says what is wrong with a fabric', () => {
  const nothing: FabricInput = {
    craft: 'knit',
    stitch: null,
    thicknessMm: null,
    thicknessU: null,
    wrapsPerInch: null,
    metresPer100g: null,
    fibre: null,
    weightCategory: null,
    stretch: null,
    ribStretch: null,
    growth: null,
    massPerAreaGsm: null,
  };
  const refused = (input: Partial<FabricInput>) => textOf(() => resolveFabric({ ...nothing, ...input }));
  expect(refused({})).toMatch(/cannot be told\. Give its thickness.*wraps per inch.*weight category.*four layers/);
  expect(refused({ metresPer100g: 200 })).toMatch(
    /cannot be told\. The metres per 100 g are there, but not the fibre\. Give/,
  );
  expect(refused({ massPerAreaGsm: 1 })).toBe('Read 1 g/m²; it lies between 10 and 10000 g/m².');
  expect(refused({ ribStretch: 9 })).toBe('Read 9; it lies between 0 and 5.');
});

describe('what is wrong with what the advice is asked for', () => {
  const said = <Code extends keyof FitErrors>(code: Code, params: FitErrors[Code]): string =>
    errorText({ code, params: params as Params });

  it('is told in words', () => {
    expect(said('rule-unknown', { name: 'x' })).toBe('There is no rule "x"; the rule table lists them all.');
    expect(said('rule-out-of-range', { name: 'band-depth', value: 151, min: 0, max: 150, unit: 'mm' })).toBe(
      'Rule "band-depth" was given 151; it takes 0 to 150 mm.',
    );
    const band = { from: 'ease-close-from', to: 'ease-close-to', fromValue: 10, toValue: 5 };
    expect(said('rule-out-of-range', band)).toBe(
      'Rules "ease-close-from" and "ease-close-to" were 10 and 5; what begins a band of ease lies below its end.',
    );
    expect(said('made-unknown', { name: 'back/cap', known: ['back/width', 'sleeve/cap-height'] })).toBe(
      'A finished piece\'s "back/cap" cannot be taken in; these can: back/width, sleeve/cap-height.',
    );
    expect(said('made-twice', { name: 'back/width', earlierMm: 240 })).toBe(
      '"back/width" fixes what an earlier entry already gave as 240 mm; keep one of them.',
    );
    expect(said('made-unfit', { name: 'sleeve/cuff-width', why: 'sleeve-of-vest' })).toBe(
      'A finished "sleeve/cuff-width" does not go with a vest, which has no sleeves.',
    );
    expect(said('garment-missing', { for: 'both' })).toBe('The basis "both" needs a garment that fits.');
    expect(said('garment-missing', { for: 'ease' })).toBe('The ease of a garment needs a garment that fits.');
    expect(said('garment-length-missing', {})).toBe(
      'A length as the garment has it needs its shoulder to hem: measure that, or choose another length.',
    );
    expect(said('favourites-too-few', {})).toMatch(/at least two with a chest width/);
  });
});

describe('what is wrong with a target sheet', () => {
  it('names the first flaws, and how many more there are', () => {
    const flaws = [
      { pointer: '', code: 'field-missing', params: { name: 'id' } },
      { pointer: '/unit', code: 'not-among', params: { known: ['mm', 'cm', null] } },
    ];
    expect(errorText({ code: 'sheet-invalid', params: { flaws, more: 2 } })).toBe(
      'This target sheet cannot be read: the sheet has no id; /unit must be one of mm, cm, null; and 2 more.',
    );
    expect(errorText({ code: 'sheet-invalid', params: { flaws: flaws.slice(1), more: 0 } })).toMatch(/, null\.$/);
  });

  it('asks for a version that can be read', () => {
    expect(errorText({ code: 'sheet-version-too-new', params: { version: '2.0', major: 1 } })).toMatch(
      /^This sheet is of version 2\.0; versions 1\.0 and up .* Ask for it in version 1, or update Easewright\.$/,
    );
  });
});

describe('what is wrong with a name on the planner’s side', () => {
  it.each<[TheirNameFault, string]>([
    [{ code: 'no-slash', params: { pointer: 'w' } }, '"w" must start with a slash: "/w".'],
    [{ code: 'filled-already', params: { pointer: '/w', by: 'back/width' } }, '"/w" is filled by back/width already.'],
    [
      { code: 'filled-above', params: { pointer: '/w', by: 'back/width' } },
      '"/w" is filled by back/width, so nothing fits below it.',
    ],
    [
      { code: 'list-with-key', params: { pointer: '', element: '0', key: 'x' } },
      'the document cannot be a list ("0") and hold "x".',
    ],
    [
      { code: 'list-with-gap', params: { pointer: '/w', element: '2' } },
      '"/w" is a list, and not every element before 2 is named.',
    ],
    [
      { code: 'column-filled-already', params: { column: 'w', by: 'back/width' } },
      'The column "w" is filled by back/width already.',
    ],
  ])('%j', (fault, words) => expect(errorText({ code: 'their-name', params: { fault } })).toBe(words));
});

it('gives the code of an error that no catalogue has', () => {
  expect(errorText(new DomainError('never-heard-of', {}))).toBe('never-heard-of');
  expect(errorText(new DomainError('constructor', {}))).toBe('constructor');
});
