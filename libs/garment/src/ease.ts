/**
 * Ease of any garment in the terms of the published tables, made or planned: what it would be called in an ordinary fabric
 * `ordinaryMm` thick with nothing beneath, Eₜ = F − B − 2πs − 4(t − t₀). Bands of ease are compared with this and nothing
 * else. All in mm.
 *
 * @param flatGirthMm F, twice the flat width
 * @param bodyGirthMm B
 * @param layerMm s, the thickness of what is worn beneath, beyond a shirt
 * @param thicknessMm t, of the garment's fabric
 * @param ordinaryMm t₀, of the ordinary fabric that the tables speak of
 */
export function easeInTableTerms(
  flatGirthMm: number,
  bodyGirthMm: number,
  layerMm: number,
  thicknessMm: number,
  ordinaryMm: number,
): number {
  return roomOf(flatGirthMm, bodyGirthMm, layerMm, thicknessMm) + 4 * ordinaryMm;
}

/**
 * The gap really left inside, R = I − (B + 2πs) with the inner girth I = F − 4t; negative where the garment stretches. mm,
 * as for `easeInTableTerms`.
 */
export function roomOf(flatGirthMm: number, bodyGirthMm: number, layerMm: number, thicknessMm: number): number {
  return flatGirthMm - 4 * thicknessMm - (bodyGirthMm + 2 * Math.PI * layerMm);
}
