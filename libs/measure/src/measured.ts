/** A length or mass as a maker gives it: a number with its unit, or a text such as `17 1/2 in`. */
export interface Measured {
  readonly value?: number | null;
  readonly unit?: string | null;
  readonly text?: string | null;
  /** Standard uncertainty, in the same unit. */
  readonly u?: number | null;
}

/** The same inside: mm or g. */
export interface Size {
  readonly size: number;
  readonly u?: number;
}
