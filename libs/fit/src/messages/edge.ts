import type { PieceName } from '../design/piece-name.ts';

/**
 * The edges that a piece may have. Left and right are the viewer’s, who sees the piece from outside; the sleeve drawn is the wearer’s left,
 * cuff down.
 */
export const EDGES = [
  'hem',
  'left-side',
  'right-side',
  'left-underarm',
  'right-underarm',
  'left-armhole',
  'right-armhole',
  'left-shoulder',
  'right-shoulder',
  'left-raglan',
  'right-raglan',
  'neck',
  'front-edge',
  'cuff',
  'left-seam',
  'right-seam',
  'back-armhole',
  'front-armhole',
  'back-raglan',
  'front-raglan',
  'back-underarm',
  'front-underarm',
  'top',
  'picked-up-edge',
  'free-edge',
  'left-end',
  'right-end',
] as const;
export type EdgeName = (typeof EDGES)[number];

/** Level or upright; slanted; neither, as a neck or a cap. */
export const EDGE_KINDS = ['straight', 'slope', 'curve'] as const;
export type EdgeKind = (typeof EDGE_KINDS)[number];

/** What an edge is joined to. It is said on both pieces. */
export interface Join {
  readonly piece: PieceName;
  readonly edge: EdgeName;
  /** The join is that of a mirrored copy: of the piece joined to, or of this one. */
  readonly mirrored?: 1;
  /** How much of the seam stays open, mm. */
  readonly open?: number;
  /** By how much this edge is longer, there, than what it is joined to; negative: shorter. Absent where they are equally long. mm */
  readonly ease?: number;
}

/** An edge of a piece, counter-clockwise. An edge joined to several is as long as their sum and the ease, in the order given. */
export interface Edge {
  readonly edge: EdgeName;
  /** Its ends, as places in the outline. */
  readonly from: number;
  readonly to: number;
  readonly kind: EdgeKind;
  /** As sewn, mm: what a sleeve steps out above its rib is no part of it. */
  readonly length: number;
  readonly joins: readonly Join[];
}
