import type { CommonSourceCodes, MessageOf, NoParams } from '#measure';
import type { Fibre } from './fibre.ts';
import type { Stitch } from './stitch.ts';

/** What a fabric's thickness is from, by code. */
export interface FabricSourceCodes extends CommonSourceCodes {
  /** Four layers, measured and divided by four. */
  readonly 'four-layers': NoParams;
  readonly wraps: { readonly wrapsPerInch: number; readonly stitch: Stitch };
  readonly 'yarn-length': { readonly metresPer100g: number; readonly fibre: Fibre; readonly stitch: Stitch };
  readonly 'weight-category': { readonly category: number; readonly name: string; readonly stitch: Stitch };
  /** The swatch’s weight and sides. */
  readonly 'swatch-weight': NoParams;
  readonly 'yarn-on-label': { readonly metresPer100g: number };
  /** Rough: what is usual for a yarn of that weight. `metresPer100g`: its length. */
  readonly 'usual-yarn': { readonly category: number; readonly name: string; readonly metresPer100g: number };
  /** Rough: a fabric so thick, of ordinary density. */
  readonly 'usual-density': { readonly thicknessMm: number };
  /** Calibrated on the expected thicknesses. */
  readonly calibrated: NoParams;
}

export type FabricSource = MessageOf<FabricSourceCodes>;

/** A category of yarn weights, as the standard system names it. */
type YarnWeightName = {
  readonly category: number;
  readonly name: string;
};

/** What there is to know about a fabric, by code. `yarn`: what its thickness was worked out from. */
export interface FabricNoteCodes {
  readonly 'growth-unknown': NoParams;
  readonly 'rib-assumed': NoParams;
  readonly 'stretch-assumed': NoParams;
  /** `times`: how many times as thick as the yarn would give. */
  readonly 'thickness-doubtful': {
    readonly thicknessMm: number;
    readonly times: number;
    readonly yarn: FabricSource;
  };
  readonly 'thickness-from-yarn': { readonly yarn: FabricSource };
  readonly 'thickness-from-category': {
    readonly yarn: FabricSource;
    readonly fromMm: number;
    readonly toMm: number;
    readonly assumed: boolean;
  };
  /** What is usual to have more than the pieces take. `share`: of the whole; `allDrawn`: all pieces are in it. */
  readonly 'yarn-spare': { readonly grams: number; readonly share: number; readonly allDrawn: boolean };
  /** The categories in whose bands the wraps lie. */
  readonly 'wraps-bands': { readonly wrapsPerInch: number; readonly weights: readonly YarnWeightName[] };
  readonly 'wraps-and-category-differ': {
    readonly wrapsPerInch: number;
    readonly weights: readonly YarnWeightName[];
    readonly category: number;
  };
}

/** Something to know, and what it rests on. */
export type FabricNote = MessageOf<FabricNoteCodes> & { readonly source?: FabricSource };
