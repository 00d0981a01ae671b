import { expect, it } from 'vitest';
import type { BodyProfile } from '#body';
import { rulesWith } from '../design/rules.ts';
import type { ResolvedWearer } from '../evidence/resolve-wearer.ts';
import type { WornGarment } from '../evidence/worn-garment.ts';
import { easeOfGarments } from './ease-of-garments.ts';

const wearer = (...garments: Pick<WornGarment, 'ease' | 'fits'>[]) =>
  ({ body: { figure: 'woman', values: {} } as BodyProfile, garments }) as unknown as ResolvedWearer;
const worn = (value: number, fits: WornGarment['fits'] = null) => ({ ease: { value, u: 5, covariances: {} }, fits });

it('says where the ease of each garment lies, a shared end in the band that it is said to fit in', () => {
  const eases = easeOfGarments(wearer(worn(75), worn(40), worn(100), worn(100, 'loose')), rulesWith({}));
  expect(eases.map(({ value, u }) => [value, u])).toEqual([75, 40, 100, 100].map((value) => [value, 5]));
  expect(eases.map(({ lies }) => lies)).toEqual([
    { code: 'within', params: { category: 'classic' } },
    { code: 'between', params: { closer: 'close', looser: 'classic' } },
    { code: 'within', params: { category: 'classic' } },
    { code: 'within', params: { category: 'loose' } },
  ]);
});
