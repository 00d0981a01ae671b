import { min, minus, positive, times } from '#measure';
import { acrossGarment } from '../model/across.ts';
import { droppedArmhole } from '../model/armhole.ts';
import { INPUTS } from '../model/inputs.ts';
import { along, equalTo, term } from '../model/planned.ts';
import { fromInset } from '../model/ref-sleeve.ts';
import { seamTop } from '../model/sleeve.ts';
import type { ConstructionModel } from './construction.ts';
import { straightArmholeDimensions, straightArmholePath, straightTopPath } from './straight-edge.ts';

/** A drop shoulder with a square taken out of the body at each underarm. */
export const squaredDrop: ConstructionModel = {
  deeper: 'squared-drop-deeper',
  ruled: [{ input: 'squaredInsetMost', rule: 'squared-inset-most' }],
  madeNames: { depth: 'armhole-depth', rise: null },
  sleeveTopIs: 'seam',
  hasArmhole: true,
  comparesRises: false,
  hasAcrossBack: true,
  refSleeveNeeds: ['cross-back-width', 'chest-width'],
  neckShare: () => 1,
  refNapeToCuff: fromInset,
  // i = c(p − S), at least 0 and at most what the rules allow. One that fits keeps its own: half of what its panel is wider.
  widths: (choices, girths) => {
    const { rules, kept, ref } = choices;
    const across = kept.acrossBack ? acrossGarment(choices, girths) : INPUTS.acrossBack;
    const own = kept.acrossBack && ref.construction === 'squared-drop';
    const c = own ? 0.5 : rules['squared-inset-share'];
    const insetAsked = positive(times(c, minus(girths.panel, across)));
    const between = minus(girths.panel, times(2, min(insetAsked, INPUTS.squaredInsetMost)));
    return { between, inset: times(0.5, minus(girths.panel, between)), insetAsked };
  },
  armhole: (choices, before) => droppedArmhole(choices, before, before.widths.inset),
  sleeveTop: ({ made }, { girths, armhole, inset }) =>
    seamTop(made.sleeveTop ? girths.sleeve : times(2, armhole.depth), inset),
  bodyDimensions: straightArmholeDimensions,
  sleeveDimensions: ({ widths }) => [
    equalTo(along('armhole-inset', widths.inset!, 0), term(1, 'armhole-inset', 'back')),
  ],
  armholePath: straightArmholePath,
  sleeveTopPath: straightTopPath,
};
