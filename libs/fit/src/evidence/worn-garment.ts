import type { BodyDimension } from '#body';
import type { GarmentProfile } from '#garment';

/** E_g, the ease of a garment that fits in the terms of the table, with its covariances with the body. mm, mm² */
export interface GarmentEase {
  readonly value: number;
  readonly u: number;
  readonly covariances: Readonly<Partial<Record<BodyDimension, number>>>;
}

/** A garment that fits, and the ease that it has on its wearer. */
export interface WornGarment extends GarmentProfile {
  readonly ease: GarmentEase;
}
