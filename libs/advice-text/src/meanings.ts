import type { CheckName, DimensionName, RuleName } from '#fit';

/** Names that stand for something which a reader has to be told. */
export interface Meanings {
  readonly rule: RuleName;
  readonly dimension: DimensionName;
  readonly check: CheckName;
}

/** What every name means, in one language. */
export type MeaningTexts = { readonly [Kind in keyof Meanings]: Readonly<Record<Meanings[Kind], string>> };
