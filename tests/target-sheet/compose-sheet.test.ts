import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { loadBodyModel } from '#body';
import { NECKLINES, SILHOUETTES } from '#fit';
import { CONSTRUCTIONS } from '#garment';
import { DomainError } from '#measure';
import { composeSheet, readSheet, toCsv, toSvg, toText, type SheetInput, type TargetSheet } from '#target-sheet';
import { holdsSheetLaws } from '../support/sheet-laws.ts';
import { anyInput, sensibleInput } from './any-input.ts';
import { childInput, exampleInput, meta } from './inputs.ts';

const model = await loadBodyModel();

const assembled = (sheet: TargetSheet, name: string): number | null | undefined =>
  sheet.assembled.find((dimension) => dimension.name === name)?.value;

function refusal(input: SheetInput): Pick<DomainError, 'code' | 'pointer'> {
  try {
    composeSheet(input, meta);
  } catch (error) {
    if (error instanceof DomainError) return { code: error.code, pointer: error.pointer };
    throw error;
  }
  throw new Error('The sheet was made.');
}

describe('a composed sheet', () => {
  it('holds the laws of a sheet for what a maker would ask', () => {
    fc.assert(
      fc.property(sensibleInput, (input) => {
        holdsSheetLaws(composeSheet(input, meta));
      }),
      { numRuns: 600 },
    );
  });

  it('holds them whatever is asked', () => {
    fc.assert(
      fc.property(anyInput, (input) => {
        holdsSheetLaws(composeSheet(input, meta));
      }),
      { numRuns: 600 },
    );
  });

  it('draws every piece of every plain design', () => {
    for (const input of [exampleInput, childInput])
      for (const construction of CONSTRUCTIONS)
        for (const silhouette of SILHOUETTES)
          for (const neckline of NECKLINES) {
            const design = { ...input.design, construction, silhouette, neckline };
            const { pieces } = composeSheet({ ...input, design }, meta);
            expect(pieces.filter(({ outline }) => !outline).map(({ piece }) => piece)).toEqual([]);
          }
  });

  it('is read back as it is, is written in every form, and leaves its input alone', () => {
    fc.assert(
      fc.property(sensibleInput, (input) => {
        const before = structuredClone(input);
        const sheet = composeSheet(input, meta);
        const json: unknown = JSON.parse(JSON.stringify(sheet));
        expect(readSheet(json)).toEqual(json);
        for (const written of [toCsv(sheet), toText(sheet), toSvg(sheet)]) expect(written).not.toMatch(/NaN|undefined/);
        expect(input).toEqual(before);
      }),
      { numRuns: 200 },
    );
  });

  it('is in the unit that was asked for', () => {
    // The model's worked example: W = 513.5 mm at t 6, classic; 51.35 cm; 20.2165 in
    expect(assembled(composeSheet(exampleInput, meta), 'chest-width')).toBeCloseTo(513.5, 9);
    expect(assembled(composeSheet({ ...exampleInput, unit: 'cm' }, meta), 'chest-width')).toBeCloseTo(51.35, 9);
    expect(assembled(composeSheet({ ...exampleInput, unit: 'in' }, meta), 'chest-width')).toBeCloseTo(513.5 / 25.4, 9);
  });

  it('carries what it was told, and the versions', () => {
    const sheet = composeSheet(exampleInput, { ...meta, ...{ secret: 1 } });
    expect(sheet).toMatchObject({ ...meta, title: 'Grey pullover', format: 'easewright/target-sheet', version: '1.0' });
    expect(sheet).not.toHaveProperty('secret');
    expect(sheet.fabric).toEqual({ thickness: 6, u: 0.3, from: 'measured', stretch: null, growth: null });
  });

  it('gives no advice where a measure is missing, and names it', () => {
    const { measures } = exampleInput.body ?? { measures: [] };
    const body = { figure: 'woman', ageYears: null, estimate: false } as const;
    const withoutNeck = measures.filter(({ name }) => name !== 'neck-base-girth');
    const sheet = composeSheet({ ...exampleInput, body: { ...body, measures: withoutNeck } }, meta);
    const neck = sheet.assembled.find(({ name }) => name === 'neck-width');
    expect(neck).toMatchObject({ value: null, noAdvice: { needs: ['neck-base-girth'] } });
    holdsSheetLaws(sheet);
  });
});

describe('the notes of a composed sheet', () => {
  it('say what was not measured and what was taken instead', () => {
    const { notes } = composeSheet(childInput, meta);
    const filledIn = notes.filter(({ code }) => code === 'not-measured').map(({ text }) => text);
    expect(filledIn.join(' ')).toMatch(/chest girth.*Taken instead: .*6/);
  });

  it('say nothing of that where all was measured', () => {
    expect(composeSheet(exampleInput, meta).notes.map(({ code }) => code)).not.toContain('not-measured');
  });

  it('name what an estimate is from', () => {
    const body = {
      figure: 'woman',
      ageYears: null,
      estimate: true,
      measures: exampleInput.body?.measures ?? [],
    } as const;
    const left = body.measures.filter(({ name }) => name !== 'neck-base-girth');
    const { notes } = composeSheet({ ...exampleInput, body: { ...body, measures: left } }, meta, { model });
    const note = notes.find(({ code }) => code === 'not-measured');
    expect(note?.text).toMatch(
      /^Not measured: neck base girth\. Taken instead: estimated from .*\(body model \d+, US Army surveys of 1988 and 2012\)\.$/,
    );
  });

  it('are told once each', () => {
    const { notes } = composeSheet(childInput, meta);
    expect(new Set(notes.map((note) => JSON.stringify(note))).size).toBe(notes.length);
  });
});

describe('what cannot be composed', () => {
  const body = exampleInput.body ?? { figure: 'woman', ageYears: null, estimate: false, measures: [] };

  it('points into the input', () => {
    expect(refusal({ ...exampleInput, rules: { nonsense: 1 } })).toEqual({
      code: 'rule-unknown',
      pointer: '/rules/nonsense',
    });
    expect(refusal({ ...exampleInput, fabric: { ...exampleInput.fabric, thicknessMm: null } }).pointer).toMatch(
      /^\/fabric/,
    );
    expect(refusal({ ...exampleInput, fabric: { ...exampleInput.fabric, thicknessMm: -1 } }).pointer).toMatch(
      /^\/fabric\/thickness/,
    );
    const inches = { name: 'chest-girth', value: 37, how: 'home' } as const;
    expect(refusal({ ...exampleInput, body: { ...body, measures: [inches] } }).pointer).toMatch(/^\/body\/measures\/0/);
    const { design } = exampleInput;
    expect(refusal({ ...exampleInput, design: { ...design, basis: 'both' } })).toEqual({
      code: 'garment-missing',
      pointer: '/design/basis',
    });
    expect(refusal({ ...exampleInput, design: { ...design, ease: { as: 'favourites' } } })).toEqual({
      code: 'favourites-too-few',
      pointer: '/design/ease',
    });
    expect(refusal({ ...exampleInput, design: { ...design, length: 'as-garment' } })).toEqual({
      code: 'garment-length-missing',
      pointer: '/design/length',
    });
    const madeTwice = [500, 510].map((value) => ({ piece: 'back', name: 'width', value }) as const);
    expect(refusal({ ...exampleInput, made: madeTwice })).toEqual({ code: 'made-twice', pointer: '/made/1' });
  });

  it('has a title that is too long', () => {
    composeSheet({ ...exampleInput, title: '🧶'.repeat(200) }, meta);
    expect(refusal({ ...exampleInput, title: 'x'.repeat(201) })).toEqual({ code: 'title-too-long', pointer: '/title' });
  });
});
