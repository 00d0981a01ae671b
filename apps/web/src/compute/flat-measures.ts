import type { GarmentDimension } from '#garment';

/** The valid measurements of a garment laid flat, mm. */
export type FlatMeasures = Readonly<Partial<Record<GarmentDimension, number>>>;
