import type { BodyDimension, Figure, StoredBody } from '#body';
import type { Craft, Fibre, Stitch, StoredFabric } from '#fabric';
import type { Basis, EaseCategory, Hem, LengthChoice, Neckline, OpeningPlace, Silhouette, StoredDesign } from '#fit';
import type { Construction, Garment, GarmentDimension, Layer, SleeveLength, StoredGarment } from '#garment';
import type { How } from '#measure';
import type { Collection } from './collection.ts';
import type { Tape, Typed } from './typed.ts';

export interface WrittenMeasure extends Typed {
  /** How it was obtained, where that differs from the rest of the body. */
  readonly how?: How;
  /** The day it was entered, YYYY-MM-DD. */
  readonly on?: string;
  /** The confirmed text; it is not questioned again. */
  readonly confirmed?: string;
}

export interface BodyNotes {
  readonly name: string;
  readonly figure: Figure;
  /** Years, as typed. */
  readonly age: string;
  /** Who measured: somebody at home, or somebody trained. */
  readonly takenBy: 'home' | 'trained';
  /** What happens to missing measurements: estimated from the others, or left open. */
  readonly skipped: 'guessed' | 'open';
  readonly measures: Readonly<Partial<Record<BodyDimension, WrittenMeasure>>>;
  /** The stored record that this was read from: what she leaves as it was shown goes back as it was. */
  readonly record?: StoredBody;
}

export interface LayerNotes {
  readonly sleeves: Layer['sleeves'];
  readonly thickness: Typed;
}

/** The wearer of a garment that is left out. */
export const NOBODY = 'nobody';

export interface GarmentNotes {
  readonly name: string;
  readonly construction: Construction;
  readonly measures: Readonly<Partial<Record<GarmentDimension, Typed>>>;
  readonly sleeveFrom: 'seam' | 'centre-back';
  /** Of one layer of its fabric. */
  readonly thickness: Typed;
  readonly layer: LayerNotes | null;
  readonly wornStretched: boolean;
  readonly fits: EaseCategory | null;
  readonly neckline: Neckline | null;
  readonly sleeve: SleeveLength;
  readonly wears: Garment['wears'];
  /** The key of the body that it fits; `nobody` leaves it out, null is the first body. */
  readonly wearer: string | null;
  /** The kept sheet that it was made from: its id in the API, else its key here. */
  readonly madeFrom: string | null;
  /** Confirmed texts, by dimension; they are not questioned again. */
  readonly confirmed: Readonly<Partial<Record<GarmentDimension, string>>>;
  /** The stored record that this was read from. */
  readonly record?: StoredGarment;
}

/** A length of the swatch before and after. */
export interface Pair {
  readonly before: Typed;
  readonly after: Typed;
}

export interface YarnNotes {
  readonly name: string;
  readonly craft: Craft;
  readonly stitch: Stitch | null;
  /** The height of four layers of the swatch under a small book. */
  readonly fourLayers: Typed;
  readonly wraps: string;
  readonly metresPer100g: string;
  readonly fibre: Fibre | null;
  readonly category: number | null;
  /** Stitches in 10 cm (4 in), from the label or the swatch. */
  readonly stitches: string;
  readonly washedAcross: Pair;
  readonly washedAlong: Pair;
  readonly pulledAcross: Pair;
  readonly pulledAlong: Pair;
  readonly pulledRib: Pair;
  /** The weight of the whole swatch; its two sides are the washed ones. */
  readonly swatchGrams: string;
  /** The stored record that this was read from. */
  readonly record?: StoredFabric;
}

/** Where the neck opens, null where that is left to the head, and how far. */
export interface OpeningNotes {
  readonly at: OpeningPlace | null;
  readonly length: Typed;
}

/** A band of ease, a number of her own, or what one sweater or those that she likes have. */
export type EaseNotes = EaseCategory | 'own' | 'garment' | 'favourites';

export interface DesignNotes {
  readonly title: string;
  readonly silhouette: Silhouette;
  readonly construction: Construction;
  readonly neckline: Neckline;
  /** Null: left to what is known. */
  readonly length: LengthChoice | null;
  readonly hem: Hem | null;
  readonly basis: Basis | null;
  readonly ease: EaseNotes | null;
  /** The place in the band of the ease: 0 is its closer end, 1 its looser. */
  readonly place: number;
  readonly ownEase: Typed;
  /** How much more ease than the sweater that fits. */
  readonly change: Typed;
  readonly layer: LayerNotes | null;
  readonly opening: OpeningNotes;
  readonly lengths: Readonly<Partial<Record<DesignLength, Typed>>>;
  /** Overridden rules, by name, in the unit of the rule. */
  readonly rules: Readonly<Record<string, number>>;
  /** The record that this was read from. */
  readonly record?: StoredDesign;
}

/** The lengths of a design that the maker may set; the rules give those that are empty. */
export const DESIGN_LENGTHS = [
  'customLength',
  'band',
  'frontBand',
  'overlap',
  'rib',
  'cuffWidth',
  'neckWidth',
  'frontNeckDepth',
  'backNeckDepth',
  'seamAllowance',
] as const;
export type DesignLength = (typeof DESIGN_LENGTHS)[number];

/** Everything that the maker entered or chose. */
export interface Notebook {
  readonly tape: Tape;
  readonly bodies: Collection<BodyNotes>;
  readonly garments: Collection<GarmentNotes>;
  readonly yarns: Collection<YarnNotes>;
  readonly design: DesignNotes;
  /** Finished pieces, keyed `piece/dimension`. */
  readonly made: Readonly<Record<string, Typed>>;
}
