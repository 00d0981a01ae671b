export interface Seam {
  readonly from: string;
  readonly to: string;
  readonly mirrored: boolean;
  readonly named: boolean;
}
export function sew(text: string): {
  readonly seams: readonly Seam[];
  readonly free: readonly string[];
  readonly narrowing: readonly string[];
};
export function rounded(
  text: string,
  roundedTo: (place: string, low: number, high: number) => number,
): ReadonlyMap<string, number>;
