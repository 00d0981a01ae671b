import type { BodyDimension } from '#body';

/** The id of the field of a body measurement, for links to it. */
export const fieldId = (dimension: BodyDimension): string => `measure-${dimension}`;
