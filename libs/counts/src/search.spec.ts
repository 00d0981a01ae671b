import fc from 'fast-check';
import { expect, it } from 'vitest';
import { cheapest } from './search.ts';

const cost = fc.integer({ min: 0, max: 50 });
const choice = fc
  .uniqueArray(fc.integer({ min: 0, max: 9 }), { minLength: 1, maxLength: 5 })
  .chain((values) => fc.tuple(...values.map((value) => fc.record({ value: fc.constant(value), cost }))))
  .map((candidates) => ({ candidates: candidates.toSorted((a, b) => a.cost - b.cost) }));

it('finds what costs least, as trying everything does', () => {
  fc.assert(
    fc.property(
      fc.array(choice, { minLength: 1, maxLength: 4 }),
      fc.integer({ min: 2, max: 3 }),
      (choices, modulus) => {
        const together = (chosen: readonly number[]): number =>
          chosen.reduce((sum, each) => sum + each, 0) % modulus === 0 ? 0 : Infinity;
        const all = choices.reduce<{ chosen: number[]; cost: number }[]>(
          (before, { candidates }) =>
            before.flatMap((one) =>
              candidates.map((next) => ({ chosen: [...one.chosen, next.value], cost: one.cost + next.cost })),
            ),
          [{ chosen: [], cost: 0 }],
        );
        const possible = all.filter(({ chosen }) => together(chosen) === 0).map((each) => each.cost);
        const found = cheapest(choices, [{ from: choices.length - 1, cost: together }]);
        if (found === null) {
          expect(possible).toEqual([]);
          return;
        }
        const spent = found.reduce(
          (sum, value, at) => sum + choices[at]!.candidates.find((each) => each.value === value)!.cost,
          0,
        );
        expect(spent).toBe(Math.min(...possible));
      },
    ),
  );
});
