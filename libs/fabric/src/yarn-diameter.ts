import type { Fibre } from './fibre.ts';

/** Density of the fibre itself, g/cm³. Source: textile handbooks, from memory. */
export const FIBRE_DENSITY: Readonly<Record<Fibre, number>> = {
  wool: 1.31,
  cotton: 1.52,
  acrylic: 1.17,
  polyester: 1.38,
  nylon: 1.14,
  linen: 1.5,
};

/**
 * How much of a yarn's round section is fibre. Source: the textile handbooks' d = 4.44 × 10⁻³ √(tex/ρ) cm is 0.65; others
 * go down to 0.5.
 */
export const PACKING = 0.65;

/** A yarn by its mass per length (tex, g a km), the share of fibre in its section (0 to 1) and its fibre's density, g/cm³. */
export interface PackedYarn {
  readonly tex: number;
  readonly packing: number;
  readonly density: number;
}

/**
 * The diameter of a yarn as packed as it is within a fabric, mm: d = 0.0357 √(tex/(φρ)), from π/4 d² φρ = mass per length.
 * It is about 2.5 times smaller than what wraps on a ruler show, where the yarn lies loose.
 */
export function packedDiameterMm({ tex, packing, density }: PackedYarn): number {
  return 0.0357 * Math.sqrt(tex / (packing * density));
}

/** The mass of a kilometre, g, of a yarn whose label gives metres per 100 g. */
export function texOf(metresPer100g: number): number {
  return 100_000 / metresPer100g;
}

/**
 * The same from what a label says: metres per 100 g (above 0) and the fibre.
 *
 * @example yarnDiameterMm(200, 'wool') // 500 tex, 1.31 g/cm³: 0.865 mm
 */
export function yarnDiameterMm(metresPer100g: number, fibre: Fibre): number {
  return packedDiameterMm({ tex: texOf(metresPer100g), packing: PACKING, density: FIBRE_DENSITY[fibre] });
}
