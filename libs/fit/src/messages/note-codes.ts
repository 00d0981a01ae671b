import type { GarmentDimension } from '#garment';
import type { MessageOf, NoParams } from '#measure';
import type { EaseCategory, OpeningPlace } from '../design/design.ts';
import type { Closing } from './cure.ts';
import type { EasePlace } from './ease-codes.ts';
import type { NoAdviceCodes } from './no-advice-codes.ts';

/** A place where a neck does open. */
type OpenPlace = Exclude<OpeningPlace, 'none'>;

/** Where a neck opens, and what lies beside it, whose seam may be the one. */
type Opens = {
  readonly at: OpenPlace;
  readonly beside: 'armhole' | 'raglan';
};

/** What is said of a sheet as a whole. */
export interface NoteCodes {
  /** `allDrawn`: every piece has a shape that could be weighed. */
  readonly weight: { readonly grams: number; readonly allDrawn: boolean };
  readonly heavy: { readonly aboveGrams: number };
  /** `outOfBand`: where the ease at the chest comes to lie, if not where it was chosen. */
  readonly 'hip-governs': {
    readonly wider: 'hem-of-garment' | 'hip';
    readonly outOfBand: {
      readonly lies: EasePlace;
      readonly chosen: EaseCategory;
      readonly taperedKeepsBoth: boolean;
    } | null;
  };
  /** A measure of a garment that the tape contradicts, and how much more it is than expected; the garment by its name or its number. */
  readonly 'garment-beside-tape': {
    readonly garment: string;
    readonly measure: GarmentDimension;
    readonly moreMm: number;
    readonly uMm: number;
  };
  /** How much more the second of two garments has, what is expected of both taken off. */
  readonly 'garments-apart': {
    readonly garments: readonly [string, string];
    readonly measure: GarmentDimension;
    readonly moreMm: number;
    readonly uMm: number;
  };
  /** The ease that so many garments that she likes have. */
  readonly 'ease-of-favourites': { readonly count: number; readonly meanMm: number; readonly sdMm: number };
  /** How far the fabric is stretched all the time, a share. */
  readonly 'worn-stretched': { readonly share: number };
  readonly 'garment-measure-waits': {
    readonly given: GarmentDimension;
    readonly lacking: GarmentDimension;
  };
  readonly 'squared-as-drop': { readonly hardlyWider: boolean };
  /** How much larger each part of a neck became than its rule, percent. */
  readonly 'neck-widened': {
    readonly widthPercent: number;
    readonly frontPercent: number;
    readonly backPercent: number;
    readonly keptByShoulders: boolean;
  };
  /** How a neck opens: where, how far each place, and how it closes. */
  readonly 'neck-opens': Opens & { readonly lengthMm: number; readonly closing: Closing };
  /** An opening of the maker's own that is longer than its place. */
  readonly 'opening-ends': Opens & { readonly askedMm: number; readonly lengthMm: number };
  /** A cardigan is open already. */
  readonly 'opening-needless': NoParams;
  /** A vest without shoulders has no seam beside its neck, and opens at the back. */
  readonly 'opening-at-back': NoParams;
  /** An own band that would have left no shoulders. */
  readonly 'band-ends': { readonly askedMm: number; readonly depthMm: number };
  readonly 'neck-tight': { readonly shorterMm: number };
  readonly 'raglan-vest': NoParams;
  readonly 'no-sleeve': NoAdviceCodes['no-sleeve'];
}

export type NoteMessage = MessageOf<NoteCodes>;

/** Where the work can hurt someone. */
type CautionCode = 'no-cords' | 'closures-hold' | 'neck-not-tight' | 'nightwear' | 'fibre-allergy';
export type CautionCodes = { readonly [Code in CautionCode]: NoParams };
export type CautionMessage = MessageOf<CautionCodes>;
