import { EASE_CATEGORIES, NECKLINES, type Construction, type EaseCategory, type Layer, type Neckline } from '#garment';

export { EASE_CATEGORIES, NECKLINES, type EaseCategory, type Neckline };

export const SILHOUETTES = ['pullover', 'cardigan', 'vest'] as const;
export type Silhouette = (typeof SILHOUETTES)[number];
export const LENGTHS = ['cropped', 'regular', 'long', 'custom', 'as-garment'] as const;
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

/** Whose ease can be taken. */
export const EASES_AS = ['garment', 'favourites'] as const;

/** A band and a place in it (0 its closer end, 1 its looser), a plain number of millimetres at the chest, or that of the garment that fits with a change. */
export type EaseChoice =
  | { readonly category: EaseCategory; readonly place: number }
  | { readonly mm: number }
  | { readonly as: 'garment'; readonly changeMm: number };
/** Also: what the garments that she likes to wear have. */
export type EaseWish = EaseChoice | { readonly as: 'favourites' };

/** A design with everything decided that depends on which garments are known. Lengths in mm; null takes the documented default. */
export interface Design {
  readonly silhouette: Silhouette;
  readonly construction: Construction;
  readonly neckline: Neckline;
  readonly length: LengthChoice;
  /** Centre-back length when `length` is custom: finished back neck edge to hem. */
  readonly customLengthMm: number | null;
  readonly basis: Basis;
  /** Null: straight, but tapered where the hip asks for more than the chest of the garment that fits. */
  readonly hem: Hem | null;
  readonly ease: EaseChoice;
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

/** What the maker wishes. What she leaves out (null) is decided by the garments that fit her. */
export interface DesignWish extends Omit<Design, 'basis' | 'length' | 'ease'> {
  readonly basis: Basis | null;
  readonly length: LengthChoice | null;
  readonly ease: EaseWish | null;
}
