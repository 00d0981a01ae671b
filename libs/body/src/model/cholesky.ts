/**
 * Cholesky factorisation of small symmetric positive definite matrices, row-major, in place:
 * the lower triangle becomes L with L·Lᵀ = A, the upper one is neither read nor written.
 * Source: Golub & Van Loan, Matrix Computations, §4.2 (the row by row form; from memory).
 *
 * @returns whether A is positive definite to rounding; where not, its content is of no use.
 */
export function factorInPlace(a: number[], n: number): boolean {
  for (let row = 0; row < n; row++) {
    const at = row * n;
    for (let column = 0; column <= row; column++) {
      const across = column * n;
      let rest = a[at + column]!;
      for (let k = 0; k < column; k++) rest -= a[at + k]! * a[across + k]!;
      if (column < row) a[at + column] = rest / a[across + column]!;
      else if (rest > 0) a[at + row] = Math.sqrt(rest);
      else return false;
    }
  }
  return true;
}

/** Solves L·y = b for the n numbers of `b` from `from` on, in place. */
export function solveLower(l: readonly number[], n: number, b: number[], from = 0): void {
  for (let row = 0; row < n; row++) {
    const at = row * n;
    let rest = b[from + row]!;
    for (let k = 0; k < row; k++) rest -= l[at + k]! * b[from + k]!;
    b[from + row] = rest / l[at + row]!;
  }
}

/** Solves Lᵀ·x = y for the n numbers of `y` from `from` on, in place. */
export function solveUpper(l: readonly number[], n: number, y: number[], from = 0): void {
  for (let row = n - 1; row >= 0; row--) {
    let rest = y[from + row]!;
    for (let k = row + 1; k < n; k++) rest -= l[k * n + row]! * y[from + k]!;
    y[from + row] = rest / l[row * n + row]!;
  }
}
