import { describe, expect, it } from 'vitest';
import { fabricOf, garmentOf, requestOf, womanWith, type Differs } from '../../../../tests/support/fit-samples.ts';
import { BODY_INPUTS, inputsOf, type KnownInput } from './inputs.ts';
import { rulesWith } from '../design/rules.ts';
import { rulesAtSize } from '../design/scale.ts';
import { AT, INPUT_NAMES, type InputName } from '../model/inputs.ts';

function inputs(differs: Differs = {}, kappa = 1) {
  const { values, known } = inputsOf(requestOf(differs), rulesAtSize(rulesWith({}), kappa), new Map());
  return {
    values,
    value: (name: InputName): number => values[AT[name]]!,
    input: (name: InputName): KnownInput | undefined => known[AT[name]],
  };
}

describe('the inputs of the model', () => {
  it('have a place each; what is not known is NaN there, with nothing known of it', () => {
    const { values, known } = inputsOf(
      requestOf({ body: womanWith({ 'head-girth': undefined }) }),
      rulesWith({}),
      new Map(),
    );
    expect(values).toHaveLength(INPUT_NAMES.length);
    for (const [place, input] of known.entries())
      if (input) expect([input.name, input.value]).toEqual([INPUT_NAMES[place], values[place]]);
    expect(values[AT.head]).toBeNaN();
    expect(known[AT.head]).toBeUndefined();
  });

  it('are every body dimension that enters, with its uncertainty and source', () => {
    const { value, input } = inputs();
    expect(value('chest')).toBe(940);
    expect(input('chest')).toMatchObject({
      term: { code: 'body-measure', params: { dimension: 'chest-girth' } },
      from: { code: 'measured', params: { how: 'home' } },
      u: 1,
      body: 'chest-girth',
    });
    expect(BODY_INPUTS).toHaveLength(16);
  });

  it('are the garment’s where it counts, flat as measured', () => {
    const garment = garmentOf({ 'chest-width': 520 }, { thicknessMm: 4 });
    const { value, input } = inputs({ garment, design: { basis: 'both' } });
    expect([value('refChestWidth'), value('refThickness'), value('refLayer')]).toEqual([520, 4, 0]);
    expect(input('refChestWidth')).toMatchObject({
      term: { code: 'garment-measure', params: { dimension: 'chest-width' } },
      u: 5,
      body: null,
    });
    expect(inputs({}).value('refChestWidth')).toBeNaN();
  });

  it('are the maker’s own lengths where she chose them, the rules’ where not', () => {
    expect(inputs({ design: { bandMm: 31 } }).input('ownBand')).toMatchObject({
      term: { code: 'band-depth' },
      from: { code: 'chosen' },
    });
    expect(inputs({ design: { bandMm: 31 } }).value('ownBand')).toBe(31);
    const ruled = inputs({}, 0.5);
    expect(ruled.value('ownBand')).toBeNaN();
    expect(ruled.value('bandDepth')).toBe(18.75);
    expect(ruled.input('bandDepth')?.from).toEqual({ code: 'rule', params: { rule: 'band-depth' } });
  });

  it('overlap a cardigan’s bands by their width, unless told otherwise', () => {
    expect(inputs({ design: { frontBandMm: 42 } }).value('overlap')).toBe(42);
    expect(inputs({ design: { frontBandMm: 42, overlapMm: 12 } }).value('overlap')).toBe(12);
    expect(inputs().value('overlap')).toBe(30);
  });

  it('take the length offset of the figure, none for a custom length', () => {
    expect(inputs({ design: { length: 'long' } }).value('lengthOffset')).toBe(280);
    expect(inputs({ design: { length: 'custom', customLengthMm: 500 } }).value('lengthOffset')).toBeNaN();
  });

  it('say where the fabric’s thickness is from', () => {
    expect(inputs({ fabric: fabricOf(6) }).input('thickness')).toMatchObject({
      u: 0.3,
      from: { code: 'four-layers', params: {} },
    });
  });

  it('are the pieces already made', () => {
    const term = { code: 'made-piece', params: { piece: 'back' } } as const;
    const made = new Map([['madeBack' as const, { value: 520, term }]]);
    const { values, known } = inputsOf(requestOf(), rulesWith({}), made);
    expect(values[AT.madeBack]).toBe(520);
    expect(known[AT.madeBack]).toMatchObject({ term, from: { code: 'made-piece' }, u: 0 });
  });
});
