import type { BodyDimension } from '#body';

/** Where a measure is written, for links to it. */
export const fieldId = (dimension: BodyDimension): string => `measure-${dimension}`;
