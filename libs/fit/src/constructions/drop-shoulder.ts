import { minus, plus, times } from '#measure';
import { droppedArmhole } from '../model/armhole.ts';
import { fromPanel } from '../model/ref-sleeve.ts';
import { seamTop } from '../model/sleeve.ts';
import type { ConstructionModel } from './construction.ts';
import { straightArmholeDimensions, straightArmholePath, straightTopPath } from './straight-edge.ts';

/** The body goes straight up to the shoulder, and the sleeve is sewn to its edge. */
export const dropShoulder: ConstructionModel = {
  deeper: 'drop-shoulder-deeper',
  ruled: [],
  madeNames: { depth: 'armhole-depth', rise: null },
  sleeveTopIs: 'seam',
  hasArmhole: true,
  comparesRises: false,
  hasAcrossBack: false,
  refSleeveNeeds: ['cross-back-width', 'chest-width'],
  neckShare: () => 1,
  refNapeToCuff: fromPanel,
  widths: (_, { panel }) => {
    const between = plus(panel);
    return { between, inset: times(0.5, minus(panel, between)), straight: true };
  },
  armhole: (choices, before) => droppedArmhole(choices, before, null),
  sleeveTop: ({ made }, { girths, armhole }) => seamTop(made.sleeveTop ? girths.sleeve : times(2, armhole.depth), null),
  bodyDimensions: straightArmholeDimensions,
  sleeveDimensions: () => [],
  armholePath: straightArmholePath,
  sleeveTopPath: straightTopPath,
};
