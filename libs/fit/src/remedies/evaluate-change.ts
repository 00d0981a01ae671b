import type { Change, Field, TracedCheck } from '../checks/check.ts';
import { isSure, marginOf } from '../checks/judge.ts';
import type { Choices } from '../design/choices.ts';
import { openingAsked } from '../design/opening-asked.ts';
import type { Computed } from '../evaluation/compute.ts';
import { evaluateChoices, evaluated, hasInset, hipGoverns } from '../evaluation/evaluate-choices.ts';
import type { Evaluated } from '../evaluation/evaluated.ts';
import { AT, INPUTS, type InputName, type InputValues } from '../model/inputs.ts';

/** The input that each field is. */
const INPUT_OF: Readonly<Record<Field, InputName>> = {
  easeMm: 'chosenEase',
  easeChangeMm: 'easeChange',
  customLengthMm: 'customLength',
  neckWidthMm: 'ownNeckWidth',
  frontNeckDepthMm: 'ownFrontNeck',
  backNeckDepthMm: 'ownBackNeck',
  bandMm: 'ownBand',
  ribMm: 'ownRib',
  cuffWidthMm: 'ownCuff',
};

/**
 * What a change did to the check it is for: how much that has to spare; how many checks of comfort it spoils, and how many others
 * become uncertain, or more so.
 */
export interface Outcome {
  readonly margin: number;
  readonly spoilt: number;
  readonly tightened: number;
}

/**
 * Evaluates a garment with a change, and compares its checks. Null where a check that is more than comfort does worse and does
 * not hold, where a number is lost, or the neck becomes tight or too deep to wear; and where it becomes another garment: a hip that
 * it now comes down to sets the width of the whole body, or a squared drop comes or goes.
 */
export function evaluateChange(change: Change, check: TracedCheck, before: Computed): Outcome | null {
  const numbers = { ...before.numbers, values: changedValues(change, before) };
  const after = evaluateChoices(changedChoices(change, before.choices), numbers);
  if (becomesAnother(before, after, numbers)) return null;
  if (losesNumber(before, after) || spoilsNeck(before, after)) return null;
  const compared = before.model.checks.map(({ traced }, i) => ({ was: traced, is: after.model.checks[i]!.traced }));
  const lost = compared.filter((each) => doesWorse(each, before, after)).map(({ is }) => is!);
  if (lost.some(({ rule }) => !rule.comfort(after.choices))) return null;
  const own = compared.find(({ was }) => was?.rule === check.rule)!.is;
  const others = compared.filter(({ was }) => was?.rule !== check.rule);
  return {
    margin: own && applies(own, after) ? marginOf(own, after.evaluation.value) : Infinity,
    spoilt: lost.length,
    tightened: others.filter((each) => tightens(each, before, after)).length,
  };
}

function changedValues(change: Change, { numbers }: Computed): InputValues {
  const values = numbers.values.slice();
  for (const field of Object.keys(INPUT_OF) as Field[]) {
    const to = change[field];
    if (to !== undefined) values[AT[INPUT_OF[field]]] = to;
  }
  return values;
}

/** Sizes of the neck that the maker chooses herself are hers from then on. */
function changedChoices(change: Change, choices: Choices): Choices {
  const { hem, length, opening, neckWidthMm, frontNeckDepthMm, backNeckDepthMm } = change;
  const { width, front, back } = choices.ownNeck;
  const { band, rib, cuff } = choices.own;
  const { asked, ownLength } = choices.opening;
  return {
    ...choices,
    hem: hem ?? choices.hem,
    hemIsFree: choices.hemIsFree && hem === undefined,
    length: length ?? choices.length,
    // How the neck opens is found again for what it becomes.
    ...openingAsked(opening ?? asked, opening === undefined && ownLength),
    own: {
      band: band || change.bandMm !== undefined,
      rib: rib || change.ribMm !== undefined,
      cuff: cuff || change.cuffWidthMm !== undefined,
    },
    ownNeck: {
      width: width || neckWidthMm !== undefined,
      front: front || frontNeckDepthMm !== undefined,
      back: back || backNeckDepthMm !== undefined,
    },
  };
}

function becomesAnother(before: Computed, after: Evaluated, numbers: Computed['numbers']): boolean {
  if (hipGoverns(after) && !hipGoverns(before)) return true;
  const { construction } = after.choices;
  if (construction !== before.choices.construction) return true;
  const asked = before.request.design.construction;
  if (asked === construction) return false;
  return hasInset(evaluated({ ...after.choices, construction: asked }, numbers), numbers.wearer);
}

/** Whether a dimension that the sheet has before and after becomes less than nothing, or unknown. */
function losesNumber({ model, evaluation }: Evaluated, after: Evaluated): boolean {
  return [...after.model.byPlace].some(([place, quantity]) => {
    const was = model.byPlace.get(place);
    return was !== undefined && evaluation.value(was) >= 0 && !(after.evaluation.value(quantity) >= 0);
  });
}

/**
 * Whether a neck becomes smaller than what it goes round, or deeper than a sweater's is: to the fullest part of the chest or the
 * underarm, a V to half the body below it (assumed).
 */
function spoilsNeck(before: Evaluated, { choices, model, evaluation }: Evaluated): boolean {
  const v = evaluation.value;
  const was = before.model.garment.neck;
  const { neck, body } = model.garment;
  const opening = v(neck.opening);
  if (opening < before.evaluation.value(was.opening) - 1e-6 && opening < v(INPUTS.neckBase)) return true;
  if (!(v(neck.front) > before.evaluation.value(was.front) + 1e-6)) return false;
  const onPiece = v(neck.piece.front);
  const underarm = v(body.underarmBelowNape) + v(neck.back);
  if (choices.neckline === 'v') return onPiece > underarm + v(body.pieceToUnderarm) / 2;
  const bust = v(INPUTS.scyeDepth) + v(INPUTS.bustLine) + v(neck.back);
  return v(neck.front) > bust || onPiece > underarm;
}

/** A check before a change and after it; null where the design has nothing for it. */
interface Compared {
  readonly was: TracedCheck | null;
  readonly is: TracedCheck | null;
}

const applies = (check: TracedCheck, { choices, evaluation }: Evaluated): boolean =>
  check.rule.applies(choices, evaluation.value(check.need));

const marginIn = (check: TracedCheck | null, { evaluation }: Evaluated): number =>
  check === null ? NaN : marginOf(check, evaluation.value);

/** How bad it is: a check that does not apply holds, and one that is not known may. */
function badness(check: TracedCheck | null, garment: Evaluated): 0 | 1 | 2 {
  if (check === null || !applies(check, garment)) return 0;
  const margin = marginIn(check, garment);
  if (margin >= 0) return 0;
  return margin < 0 ? 2 : 1;
}

/** Whether a check does not hold after, and held before, or was better known, or lacked less. */
function doesWorse({ was, is }: Compared, before: Evaluated, after: Evaluated): boolean {
  const now = badness(is, after);
  if (now === 0) return false;
  return now > badness(was, before) || marginIn(is, after) < marginIn(was, before) - 1e-6;
}

/** Whether a check that is more than comfort still holds, with less to spare than before and with little certainty. */
function tightens({ was, is }: Compared, before: Evaluated, after: Evaluated): boolean {
  if (is === null || was === null || !applies(is, after) || is.rule.comfort(after.choices)) return false;
  const margin = marginIn(is, after);
  if (!(margin >= 0 && margin < marginIn(was, before) - 1e-6)) return false;
  return !isSure(margin, is, before.evaluation.judgedUncertainty(was.margin), after.evaluation.value, after.choices);
}
