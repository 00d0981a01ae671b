const MM2_PER_M2 = 1_000_000;

/** Grams of fabric in an area, mm², at so many grams a square metre. */
export function weightOf(areaMm2: number, massPerAreaGsm: number): number {
  return (areaMm2 / MM2_PER_M2) * massPerAreaGsm;
}
