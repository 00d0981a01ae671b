/**
 * Off the needles and unwashed, mm: what must be made so that, washed and hung, `valueMm` and its seam allowance are left.
 * Only a planner whose gauge is from an unwashed swatch uses it; with a washed gauge growth would count twice.
 *
 * @param growth (washed − before)/before along that axis, above −1
 */
export function asMade(valueMm: number, allowanceMm: number, growth: number): number {
  return (valueMm + allowanceMm) / (1 + growth);
}
