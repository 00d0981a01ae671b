/** A term of an identity: so many times a dimension, of the same piece unless another is named. */
export interface IdentityTerm {
  readonly piece?: string;
  readonly name: string;
  readonly times: number;
}

/** A dimension that others make: `Σ times × value + plus`. */
export interface Identity {
  readonly name: string;
  readonly equals: readonly IdentityTerm[];
  readonly plus?: number;
}

/** A dimension of a piece, as far as counting needs it. Lengths in the sheet's unit. */
export interface CountableDimension {
  readonly name: string;
  readonly axis: 'across' | 'along';
  readonly fabric: 'main' | 'rib';
  readonly value: number | null;
  readonly allowance: number;
  readonly low?: number;
  readonly high?: number;
  /** A length that no count defines: a seam's, an edge's. */
  readonly derived?: boolean;
  readonly follows?: readonly { readonly piece: string; readonly name: string; readonly slope: number }[];
}

/** An edge of an outline: from one of its points to another, counter-clockwise, and what it is joined to. */
export interface CountableEdge {
  readonly edge: string;
  readonly from: number;
  readonly to: number;
  readonly kind: 'straight' | 'slope' | 'curve';
  readonly length: number;
  readonly joins: readonly { readonly piece: string; readonly edge: string }[];
}

/** A part of a piece in one fabric, from the edge where the work begins. `startsAt`: the first width of what lies above. */
export interface CountableRegion {
  readonly region: string;
  readonly fabric: 'main' | 'rib' | 'other';
  readonly from: number;
  readonly to: number;
  readonly stitches?: 'as-above' | 'own';
  readonly width?: number;
  readonly startsAt?: number;
}

export interface CountablePiece {
  readonly piece: string;
  readonly outline?: readonly (readonly [number, number])[];
  readonly edges: readonly CountableEdge[];
  readonly regions: readonly CountableRegion[];
  readonly dimensions: readonly CountableDimension[];
  readonly identities: readonly Identity[];
}

/** What counting reads of a target sheet. */
export interface CountableSheet {
  readonly pieces: readonly CountablePiece[];
}

/** What a piece of a sheet that was kept long ago may lack. */
type Newer = 'edges' | 'regions' | 'identities';

/** A sheet as it comes. */
export interface SheetToCount {
  readonly pieces: readonly (Omit<CountablePiece, Newer> & Partial<Pick<CountablePiece, Newer>>)[];
}

/** A sheet with nothing missing: a piece that names no edges, regions or identities has none. */
export const countableSheet = ({ pieces }: SheetToCount): CountableSheet => ({
  pieces: pieces.map(({ edges = [], regions = [], identities = [], ...piece }) => ({
    ...piece,
    edges,
    regions,
    identities,
  })),
});
