import table from './yarn-weights.json' with { type: 'json' };

/** Both ends included; null where the table leaves it open ("40 and more"). */
export interface Band {
  readonly from: number | null;
  readonly to: number | null;
}

/** A category of the standard yarn weight system. Gauges are stitches in 4 inches; hooks in mm. */
export interface YarnWeight {
  readonly category: number;
  readonly name: string;
  readonly crochet: Band & { readonly stitch: string };
  readonly hookMm: Band;
  readonly stockinette: Band;
  readonly wrapsPerInch: Band;
}

/** What an earlier printing of the same table says otherwise. The product shows it and computes with the current one. */
export interface OtherPrinting {
  readonly printing: string;
  readonly category: number;
  readonly crochet: Band & { readonly stitch: string };
  readonly hookMm: Band;
}

/** The eight categories in order, 0 (lace) to 7 (jumbo), with their source and where its printings disagree. */
export const YARN_WEIGHTS: {
  readonly source: string;
  readonly gaugeOverInches: number;
  readonly weights: readonly YarnWeight[];
  readonly otherPrintings: readonly OtherPrinting[];
} = table;

/** The categories whose band holds so many wraps per inch: none, one or several, since the bands overlap and leave gaps. */
export function categoriesOfWraps(wrapsPerInch: number): readonly YarnWeight[] {
  return YARN_WEIGHTS.weights.filter(
    ({ wrapsPerInch: { from, to } }) => wrapsPerInch >= (from ?? 0) && wrapsPerInch <= (to ?? Infinity),
  );
}
