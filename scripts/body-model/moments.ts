import type { Columns } from './columns.ts';

/** Mean vector and covariance (row-major, divisor n − 1) of the natural logarithms of some columns. */
export function logMoments(columns: Columns, names: readonly string[]): { mean: number[]; covariance: number[] } {
  const n = names.length;
  const logs = names.map((name) => columns[name]!.map(Math.log));
  const rows = logs[0]!.length;
  const mean = Array.from(logs, (values) => values.reduce((sum, value) => sum + value, 0) / rows);
  const covariance = new Array<number>(n * n).fill(0);
  for (let i = 0; i < n; i++) {
    for (let j = 0; j <= i; j++) {
      let sum = 0;
      for (let row = 0; row < rows; row++) sum += (logs[i]![row]! - mean[i]!) * (logs[j]![row]! - mean[j]!);
      covariance[i * n + j] = covariance[j * n + i] = sum / (rows - 1);
    }
  }
  return { mean, covariance };
}

/** The value below which a part of the numbers lies, linear between them (Hyndman & Fan 1996, type 7). */
export function quantile(values: readonly number[], part: number): number {
  const sorted = [...values].sort((a, b) => a - b);
  const place = part * (sorted.length - 1);
  const below = Math.floor(place);
  const low = sorted[below]!;
  return low + (place - below) * ((sorted[below + 1] ?? low) - low);
}

export const average = (values: readonly number[]): number =>
  values.reduce((sum, value) => sum + value, 0) / values.length;
