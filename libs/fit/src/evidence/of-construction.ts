import type { Construction, GarmentDimension } from '#garment';
import type { Rules } from '../design/rules.ts';
import type { Sweater } from './sweater.ts';

/** How far the sleeve's seam lies from the centre of the back: a length, and so many of the across back and of the ease. mm */
interface Seam {
  readonly length: number;
  readonly acrossBack: number;
  readonly ease: number;
}

/** What a sweater tells of its wearer by the way it is constructed. */
interface OfConstruction {
  /** Its cross back is the wearer's across back with 0.12 of the ease. */
  readonly crossBack: boolean;
  /** Its armhole is read from the first of these that was measured, and is so much deeper than a set-in's; null where its depth tells nothing. */
  readonly armhole: {
    readonly from: readonly GarmentDimension[];
    readonly deeper: (sized: Rules) => number;
  } | null;
  /** Its sleeve top is as wide as the upper arm asks. */
  readonly upperArm: boolean;
  /** Null where nothing says how far the seam is out. */
  readonly seam: (sweater: Sweater) => Seam | null;
}

const at = (length: number | null): Seam | null => (length === null ? null : { length, acrossBack: 0, ease: 0 });

function half({ values }: Sweater, name: GarmentDimension): number | null {
  const width = values[name]?.value;
  return width === undefined ? null : width / 2;
}

/** The panel's width as its stitches give it: half of the mid girth. */
function panel({ values, thicknessMm }: Sweater): number | null {
  const chest = values['chest-width']?.value;
  return chest === undefined ? null : chest - ((4 - Math.PI) / 2) * thicknessMm;
}

/** So much of something that may not be known. */
const part = (share: number, of: number | null): number | null => (of === null ? null : share * of);

export const OF_CONSTRUCTION: Readonly<Record<Construction, OfConstruction>> = {
  'drop-shoulder': {
    crossBack: false,
    armhole: { from: ['armhole-depth', 'sleeve-top-width'], deeper: (sized) => sized['drop-shoulder-deeper'] },
    upperArm: false,
    seam: (sweater) => at(part(1 / 2, panel(sweater))),
  },
  'squared-drop': {
    crossBack: false,
    armhole: { from: ['armhole-depth', 'sleeve-top-width'], deeper: (sized) => sized['squared-drop-deeper'] },
    upperArm: false,
    seam: (sweater) => {
      // Unmeasured, its inset is a quarter of panel less across back on each side: between the armholes lies half of both.
      const width = part(1 / 4, panel(sweater));
      return (
        at(half(sweater, 'cross-back-width')) ?? (width === null ? null : { length: width, acrossBack: 1 / 4, ease: 0 })
      );
    },
  },
  'set-in': {
    crossBack: true,
    armhole: { from: ['armhole-depth'], deeper: () => 0 },
    upperArm: true,
    seam: (sweater) => at(half(sweater, 'cross-back-width')) ?? { length: 0, acrossBack: 1 / 2, ease: 0.12 / 2 },
  },
  raglan: {
    crossBack: false,
    armhole: null, // it runs from the neck
    upperArm: true,
    seam: (sweater) => at(half(sweater, 'neck-width')),
  },
};
