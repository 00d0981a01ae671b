import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { BodyDimension } from '#body';
import { plannedRequest, wholeBody } from '../../../../tests/support/fit-requests.ts';
import {
  adviceOn,
  bodyOf,
  dimension,
  everyDimension,
  garmentOf,
  requestOf,
  WOMAN,
  womanWith,
} from '../../../../tests/support/fit-samples.ts';
import { advise } from '../advice/advise.ts';

const needs = (measure: BodyDimension, path: string) =>
  dimension(adviceOn({ body: womanWith({ [measure]: undefined }) }), path).noAdvice?.needs;

describe('a dimension without a value', () => {
  it.each<[BodyDimension, string]>([
    ['chest-girth', 'chest-width'],
    ['nape-to-cuff', 'sleeve-length'],
    ['chest-girth', 'sleeve-length'],
    ['scye-depth', 'armhole-depth'],
    ['back-waist-length', 'centre-back-length'],
    ['neck-base-girth', 'neck-width'],
    ['wrist-girth', 'sleeve/cuff-width'],
  ])('names the measure it lacks: %s for %s', (measure, path) => {
    expect(needs(measure, path)).toEqual([measure]);
  });

  it('names them all', () => {
    const body = womanWith({ 'chest-girth': undefined, 'nape-to-cuff': undefined });
    expect(dimension(adviceOn({ body }), 'sleeve-length').noAdvice).toEqual({
      code: 'measure',
      params: { measures: ['chest-girth', 'nape-to-cuff'], why: null },
      needs: ['chest-girth', 'nape-to-cuff'],
    });
  });

  it('says why the body does not have it', () => {
    const why = { code: 'not-in-table', params: { table: 'Craft Yarn Council, woman' } } as const;
    const body = { ...womanWith({ 'wrist-girth': undefined }), missing: { 'wrist-girth': why } };
    expect(dimension(adviceOn({ body }), 'cuff-width').noAdvice).toMatchObject({
      code: 'measure',
      params: { measures: ['wrist-girth'], why },
    });
  });

  it('of a child without a chest asks for the chest', () => {
    const child = bodyOf({ ...WOMAN, 'chest-girth': undefined }, 'child');
    for (const [path, { value, noAdvice }] of everyDimension(adviceOn({ body: child })))
      if (value === null) expect(noAdvice?.needs, path).toEqual(['chest-girth']);
  });

  it('takes nothing else with it', () => {
    const lacking = everyDimension(adviceOn({ body: womanWith({ 'wrist-girth': undefined }) }))
      .filter(([, { value }]) => value === null)
      .map(([path]) => path);
    expect(lacking).toEqual(['cuff-width', 'sleeve/cuff-width', 'sleeve/above-rib-width']);
  });

  it('may lack a measure of the garment, where there is no body', () => {
    const garment = garmentOf({ 'chest-width': 520 });
    const advice = adviceOn({ body: null, garment, design: { basis: 'garment' } });
    expect(dimension(advice, 'chest-width').value).toBe(520);
    expect(dimension(advice, 'sleeve-length').noAdvice?.needs).toContain('nape-to-cuff');
  });

  it('has a reason, no terms, and asks for what the body lacks', () => {
    fc.assert(
      fc.property(plannedRequest, (request) => {
        for (const [path, { value, noAdvice, because, u, low }] of everyDimension(advise(request))) {
          expect(noAdvice !== undefined, path).toBe(value === null);
          if (value !== null) continue;
          expect([because, u, low], path).toEqual([[], undefined, undefined]);
          for (const name of noAdvice!.needs) expect(request.body?.values[name], `${path} ${name}`).toBeUndefined();
        }
      }),
      { numRuns: 100 },
    );
  });
});

describe('a body of which all is known', () => {
  it('lacks nothing', () => {
    fc.assert(
      fc.property(wholeBody, (body) => {
        for (const [, { noAdvice }] of everyDimension(advise(requestOf({ body }))))
          expect(noAdvice?.needs ?? []).toEqual([]);
      }),
      { numRuns: 40 },
    );
  });
});
