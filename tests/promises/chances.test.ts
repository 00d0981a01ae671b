/**
 * The chance that a check fails, against a Monte Carlo run (the method of JCGM 101:2008): the sheet is made and stays, and the body's true
 * measures, the fabric's thickness and the making are drawn. Source of the method: Joint Committee for Guides in Metrology.
 */
import { expect, it } from 'vitest';
import type { BodyDimension } from '#body';
import { advise, type CheckName } from '#fit';
import { CONSTRUCTIONS } from '#garment';
import { comparedOn, numbersOf } from '../support/checks-on-sheet.ts';
import { bodyOf, fabricOf, requestOf } from '../support/fit-samples.ts';
import { normalDraw, seeded } from '../support/seeded-normal.ts';
import { SIZE_BODIES } from '../support/size-bodies.ts';

const DRAWS = 20_000;

/** Standard uncertainties of estimates, mm: wide enough for chances that differ from none. */
const US: Readonly<Partial<Record<BodyDimension, number>>> = {
  'chest-girth': 25,
  'hip-girth': 30,
  'upper-arm-girth': 17,
  'across-back': 14,
  'head-girth': 14,
  'hand-girth': 8,
  'shoulder-girth': 30,
  'scye-girth': 17,
  'scye-depth': 10,
  'neck-base-girth': 8,
  'nape-to-cuff': 15,
  'underarm-length': 12,
};

/** What is made to a girth is off by its share of it. */
const GIRTHS: readonly CheckName[] = [
  'head-through-neck',
  'hand-through-cuff',
  'upper-arm',
  'armhole',
  'over-the-shoulders',
  'hip',
];
const MAKING = 0.01;

const CASES = CONSTRUCTIONS.flatMap((construction) =>
  ['woman M', 'woman 3X', 'man L', 'child 8'].flatMap((size) =>
    (['very-close', 'close', 'classic'] as const).map((category) => ({ construction, size, category })),
  ),
);

it.each(CASES)('$size, $construction, $category', ({ construction, size, category }) => {
  const { figure, measures } = SIZE_BODIES.find((each) => each.size === size)!;
  const zeros = Object.fromEntries(Object.keys(measures).map((name) => [name, 0]));
  const asked = requestOf({
    body: bodyOf(measures, figure, { ...zeros, ...US }),
    fabric: fabricOf(4, { craft: 'crochet', thicknessU: 0.5 }),
    // A cuff and a neck of her own leave their checks something to doubt.
    design: { construction, ease: { category, place: 0.5 }, cuffWidthMm: figure === 'child' ? 92 : 112 },
  });
  const advice = advise(asked);
  const numbers = numbersOf(advice);
  const random = seeded(CASES.findIndex((each) => each.construction === construction && each.size === size) + 1);
  const failed = new Map<CheckName, number>();
  for (let draw = 0; draw < DRAWS; draw++) {
    const drawn = Object.fromEntries(
      Object.entries(measures).map(([name, mm]) => [name, mm + (US[name as BodyDimension] ?? 0) * normalDraw(random)]),
    );
    const { fabric } = asked;
    const thicknessMm = fabric.thicknessMm + fabric.thicknessU * normalDraw(random);
    const compared = comparedOn(
      { ...asked, body: bodyOf(drawn, figure), fabric: { ...fabric, thicknessMm } },
      advice,
      numbers,
    );
    for (const [name, [need, have]] of Object.entries(compared) as [CheckName, readonly [number, number]][]) {
      const made = GIRTHS.includes(name) ? have * (1 + MAKING * normalDraw(random)) : have;
      if (made < need) failed.set(name, (failed.get(name) ?? 0) + 1);
    }
  }
  for (const { check, verdict, chanceOfFailing } of advice.checks) {
    if (!GIRTHS.includes(check) || verdict === 'n/a') continue;
    const share = (failed.get(check) ?? 0) / DRAWS;
    expect(Math.abs(chanceOfFailing! - share), `${check}: ${chanceOfFailing} for ${share}`).toBeLessThanOrEqual(0.02);
  }
});
