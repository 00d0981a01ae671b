/** What the sheets of any input come to in stitches and rows, at five gauges from fine to very thick. */
import fc from 'fast-check';
import { expect, it } from 'vitest';
import { countsOf, type Counts } from '#counts';
import { DomainError } from '#measure';
import { composeSheet, type TargetSheet } from '#target-sheet';
import { anyInput } from './any-input.ts';
import { meta } from './inputs.ts';

/** Stitches and rows in 10 cm. */
const GAUGES = [
  [28, 38],
  [22, 30],
  [16, 22],
  [11, 15],
  [7, 9],
] as const;
const PLAIN = { multiple: { main: null, rib: null }, parity: null, evenRows: false } as const;

const countedBy = (counts: Counts) =>
  new Map(
    counts.pieces.flatMap(({ piece, dimensions }) =>
      dimensions.map((each) => [`${piece}/${each.name}`, each] as const),
    ),
  );

/** Identities among stitches alone, or among rows alone of one fabric, hold in whole numbers. */
function expectToClose({ pieces }: TargetSheet, counts: Counts): void {
  const counted = countedBy(counts);
  for (const { piece, identities } of pieces)
    for (const { name, equals, plus = 0 } of identities) {
      const whole = counted.get(`${piece}/${name}`);
      const terms = equals.map((term) => ({ ...term, of: counted.get(`${term.piece ?? piece}/${term.name}`) }));
      const alike = terms.every(({ of }) => of?.axis === whole?.axis && of?.fabric === whole?.fabric);
      if (!whole || !alike || plus !== 0) continue;
      const sum = terms.reduce((all, { times, of }) => all + times * of!.count, 0);
      expect(whole.count, `${piece}/${name}`).toBe(sum);
    }
}

it('close, are whole, and name what leaves its range', () => {
  fc.assert(
    fc.property(anyInput, fc.constantFrom(...GAUGES), (input, [stitches, rows]) => {
      // A count takes in the seam allowance, which not every dimension of an identity has.
      const design = { ...input.design, seamAllowanceMm: 0 };
      const sheet = composeSheet({ ...input, design, unit: 'mm' }, meta);
      const gauge = { main: { stitches, rows, over: 100 }, rib: null };
      let counts: Counts;
      try {
        counts = countsOf(sheet, { gauge, ...PLAIN }, 100);
      } catch (error) {
        if (!(error instanceof DomainError)) throw error;
        expect(error.code).toBe('nothing-to-count');
        return;
      }
      for (const { piece, dimensions } of counts.pieces)
        for (const { name, count } of dimensions) expect(Number.isInteger(count), `${piece}/${name}`).toBe(true);
      for (const { low, high, measures } of counts.outside) expect(measures < low || measures > high).toBe(true);
      expectToClose(sheet, counts);
    }),
    { numRuns: 120 },
  );
});
