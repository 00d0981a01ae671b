import type { BodyDimension } from '#body';
import type { Craft } from '#fabric';
import type { MessageOf, NoParams } from '#measure';
import type { CheckName } from '../design/check-name.ts';
import type { Cure } from './cure.ts';
import type { NoAdviceCodes } from './no-advice-codes.ts';

/** What a check is about: a shoulder that a neck leaves is a code of its own. */
export type CheckCode = CheckName | 'shoulder-beside-neck';

/** Two edges that are joined. */
export type SeamEdges = 'widths' | 'armhole-and-top' | 'armhole-and-cap' | 'raglan-edges' | 'armholes' | 'sides';

/** What some checks say besides. Lengths in mm. */
interface CheckDetails {
  /** How much wider round than the hand the cuff is; null where that is hardly so. */
  readonly 'cuff-stays': { readonly widerMm: number | null };
  readonly 'negative-ease': { readonly overLayer: boolean };
  readonly seam: { readonly edges: SeamEdges; readonly differMm: number };
  /** How far past the cuff as wished the sleeve ends; negative where it falls short. */
  readonly 'nape-to-cuff': { readonly pastMm: number };
}
type DetailsOf<Code> = Code extends keyof CheckDetails ? CheckDetails[Code] : NoParams;

/** Why the numbers of a check are not known, where no measure of the body would tell. */
type Lack = Extract<keyof NoAdviceCodes, 'garment-measure-missing' | 'no-shape-joins'>;

/**
 * What came of a check. `barely`: it holds, and may not; `uncertain`: the same, for want of one measure alone; `poor`: a matter of comfort that
 * does not hold. `usualStretch`: the craft whose usual stretch was taken for a fabric that was not pulled, where stretch counts. `marginMm` is what is to spare (negative: missing),
 * of a girth or a length; null where that tells nothing.
 */
export type CheckFinding<Details> =
  | { readonly finding: 'holds'; readonly usualStretch: Craft | null }
  | { readonly finding: 'does-not-apply' }
  | { readonly finding: 'not-known'; readonly needs: readonly BodyDimension[]; readonly lack: Lack | null }
  | CheckTrouble<Details>;

export type CheckTrouble<Details> = {
  readonly finding: 'fails' | 'poor' | 'barely' | 'uncertain';
  readonly usualStretch: Craft | null;
  readonly marginMm: number | null;
  readonly of: 'girth' | 'length';
  readonly uncertain: BodyDimension | null;
  readonly cures: readonly Cure[];
  readonly details: Details;
};

export type CheckCodes = { readonly [Code in CheckCode]: CheckFinding<DetailsOf<Code>> };
export type CheckMessage = MessageOf<CheckCodes>;
