import type { Construction, Layer } from '#garment';

export const SILHOUETTES = ['pullover', 'cardigan', 'vest'] as const;
export type Silhouette = (typeof SILHOUETTES)[number];
export const NECKLINES = ['crew', 'v', 'boat', 'scoop'] as const;
export type Neckline = (typeof NECKLINES)[number];
export const LENGTHS = ['cropped', 'regular', 'long', 'custom'] as const;
export type LengthChoice = (typeof LENGTHS)[number];
export const BASES = ['body', 'garment', 'both'] as const;
export type Basis = (typeof BASES)[number];
export const HEMS = ['straight', 'tapered'] as const;
export type Hem = (typeof HEMS)[number];
/** Where a neck opens: at one shoulder or both (of a raglan along its seam), at the centre of the back or the front. */
export const OPENING_PLACES = ['none', 'shoulder', 'shoulders', 'back', 'front'] as const;
export type OpeningPlace = (typeof OPENING_PLACES)[number];
/** How many edges of an opening's length the head passes between. */
export const OPENING_EDGES = { shoulder: 2, shoulders: 4, back: 2, front: 2 } as const satisfies Readonly<
  Record<Exclude<OpeningPlace, 'none'>, number>
>;
export const EASE_CATEGORIES = ['very-close', 'close', 'classic', 'loose', 'oversized'] as const;
export type EaseCategory = (typeof EASE_CATEGORIES)[number];

/** A band and a place in it (0 its closer end, 1 its looser), or a plain number of millimetres at the chest. */
export type EaseChoice = { readonly category: EaseCategory; readonly place: number } | { readonly mm: number };

/** What the maker chose. Lengths in mm; null takes the documented default. */
export interface Design {
  readonly silhouette: Silhouette;
  readonly construction: Construction;
  readonly neckline: Neckline;
  readonly length: LengthChoice;
  /** Centre-back length when `length` is custom: finished back neck edge to hem. */
  readonly customLengthMm: number | null;
  readonly basis: Basis;
  readonly hem: Hem;
  readonly ease: EaseChoice;
  /** ΔE on the garment that fits: 0 is "like this one". */
  readonly easeChangeMm: number;
  readonly layer: Layer | null;
  /** Where the neck opens, and how far; null opens it where the head does not pass otherwise, and a length of null as far as needed. */
  readonly opening: { readonly at: OpeningPlace; readonly lengthMm: number | null } | null;
  /** Depth of the neck band (and a vest's armhole bands); default by the fabric's thickness. */
  readonly bandMm: number | null;
  /** Width of a cardigan's front band (default 30κ½) and how far the two overlap (default: its width). */
  readonly frontBandMm: number | null;
  readonly overlapMm: number | null;
  /** Depth of the rib at hem and cuff; default by the fabric's thickness. */
  readonly ribMm: number | null;
  /** The maker's own cuff, finished: its flat width; null lets the wrist and the hand decide. */
  readonly cuffWidthMm: number | null;
  /** The maker's own neck, finished; null lets the rules decide. */
  readonly neckWidthMm: number | null;
  readonly frontNeckDepthMm: number | null;
  readonly backNeckDepthMm: number | null;
  /** Added at each joined edge of a piece; 0 for none. */
  readonly seamAllowanceMm: number;
}
