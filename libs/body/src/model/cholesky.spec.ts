import fc from 'fast-check';
import { CholeskyDecomposition, Matrix } from 'ml-matrix';
import { describe, expect, it } from 'vitest';
import { factorInPlace, solveLower, solveUpper } from './cholesky.ts';

/** B·Bᵀ + I/10 is positive definite for any B. */
const system = fc.integer({ min: 1, max: 12 }).chain((n) =>
  fc.record({
    n: fc.constant(n),
    a: fc.array(fc.double({ min: -3, max: 3, noNaN: true }), { minLength: n * n, maxLength: n * n }).map((cells) => {
      const b = Matrix.from1DArray(n, n, cells);
      return b.mmul(b.transpose()).add(Matrix.eye(n, n, 0.1));
    }),
    right: fc.array(fc.double({ min: -3, max: 3, noNaN: true }), { minLength: n, maxLength: n }),
  }),
);

/** ml-matrix 6 as the outside check of the algebra. */
describe('Cholesky factorisation', () => {
  it('has the lower factor of ml-matrix', () => {
    fc.assert(
      fc.property(system, ({ n, a }) => {
        const ours = Array.from(a.to1DArray());
        expect(factorInPlace(ours, n)).toBe(true);
        const theirs = new CholeskyDecomposition(a).lowerTriangularMatrix;
        for (let row = 0; row < n; row++) {
          for (let column = 0; column <= row; column++) {
            expect(ours[row * n + column]).toBeCloseTo(theirs.get(row, column), 9);
          }
        }
      }),
    );
  });

  it('solves a system: A times the answer is the right side', () => {
    fc.assert(
      fc.property(system, ({ n, a, right }) => {
        const l = Array.from(a.to1DArray());
        factorInPlace(l, n);
        const padded = Array.from([99, ...right]);
        solveLower(l, n, padded, 1);
        solveUpper(l, n, padded, 1);
        const again = a.mmul(Matrix.columnVector([...padded.slice(1)])).to1DArray();
        again.forEach((value, i) => expect(value).toBeCloseTo(right[i]!, 7));
        expect(padded[0]).toBe(99);
      }),
    );
  });

  it('says so where the matrix is not positive definite', () => {
    expect(factorInPlace([1, 2, 2, 1], 2)).toBe(false);
    expect(factorInPlace([1, 1, 1, 1], 2)).toBe(false);
    expect(factorInPlace([0], 1)).toBe(false);
  });
});
