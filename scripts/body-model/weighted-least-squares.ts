import { Matrix, solve } from 'ml-matrix';

/** The coefficients of y on the columns of x (a row a person), each row weighing as said. */
export function weightedLeastSquares(
  x: readonly (readonly number[])[],
  y: readonly number[],
  weights: readonly number[] = y.map(() => 1),
): number[] {
  const design = new Matrix(x.map((row) => [...row]));
  const weighted = new Matrix(x.map((row, i) => row.map((value) => value * weights[i]!)));
  const right = weighted.transpose().mmul(Matrix.columnVector([...y]));
  return solve(weighted.transpose().mmul(design), right).to1DArray();
}

export const dot = (a: readonly number[], b: readonly number[]): number =>
  a.reduce((sum, value, i) => sum + value * b[i]!, 0);
