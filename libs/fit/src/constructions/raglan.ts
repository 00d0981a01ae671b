import { hypot, leg, min, minus, plus, positive, times } from '#measure';
import { INPUTS } from '../model/inputs.ts';
import { across, along, byItself, equalTo, term } from '../model/planned.ts';
import { fromNeck } from '../model/ref-sleeve.ts';
import { girthTop } from '../model/sleeve.ts';
import type { ConstructionModel } from './construction.ts';
import { slopedTopPath } from './sloped-top.ts';

/**
 * Body and sleeves meet in slanted edges up to the neck. The body's depth is kept and the sleeve's rise solved from the common
 * edge; where a sleeve was made before its body, the other way round. The front is the back with the neck cut into it.
 */
export const raglan: ConstructionModel = {
  deeper: 'raglan-deeper',
  ruled: [],
  madeNames: { depth: 'raglan-depth', rise: 'sleeve-raglan-depth' },
  sleeveTopIs: 'girth',
  hasArmhole: false,
  comparesRises: true,
  hasAcrossBack: false,
  refSleeveNeeds: ['neck-width'],
  neckShare: (rules) => rules['raglan-neck-share'],
  refNapeToCuff: fromNeck,
  widths: () => ({ between: null, inset: null }),
  armhole: (choices, { girths, lengths, neck }) => {
    const { rules, made, silhouette } = choices;
    const { panel, sleeve: G } = girths;
    const b = times(rules['raglan-bind-off-share'], panel);
    const neckWidth = times(rules['raglan-neck-share'], neck.piece.width);
    const halfTop = min(
      times(rules['raglan-top-neck-share'], neck.piece.width),
      times(rules['raglan-top-sleeve-share'], G),
    );
    const run = minus(times(0.5, minus(panel, neckWidth)), b);
    const sleeveRun = minus(times(0.5, G), halfTop, b);
    // A vest's armhole band lies below the raglan, so its piece goes down by as much as the neck band takes off.
    const vest = silhouette === 'vest';
    const below = times(vest ? 0 : 1, neck.band);
    const depth = made.armhole
      ? plus(INPUTS.madeArmhole, below)
      : made.sleeveRaglan
        ? plus(leg(hypot(sleeveRun, INPUTS.madeSleeveRaglan), run), neck.band)
        : plus(lengths.armholeBase, INPUTS.armholeDeeper);
    const onPiece = minus(depth, below);
    const bands = times(vest ? 1 : 0, neck.band);
    const pieceBindOff = plus(b, bands);
    return {
      depth,
      onPiece,
      measuredFrom: 'nape',
      seam: hypot(run, onPiece),
      pieceEdge: plus(pieceBindOff, hypot(minus(run, bands), onPiece)),
      bindOff: b,
      pieceBindOff,
      fallShare: 0,
      // A front neck shallower than the back's is not cut at all: the piece ends there.
      pieceNeck: { width: neckWidth, front: positive(minus(neck.piece.front, neck.piece.back)), back: neck.piece.back },
      raglan: { run, sleeveRun, halfTop },
    };
  },
  sleeveTop: ({ made }, { girths, armhole }) => {
    const { sleeveRun, halfTop } = armhole.raglan!;
    const rise = made.sleeveRaglan ? plus(INPUTS.madeSleeveRaglan) : leg(armhole.seam, sleeveRun);
    return girthTop(girths.sleeve, rise, { topEdge: times(2, halfTop), seam: hypot(sleeveRun, rise) });
  },
  bodyDimensions: ({ armhole, rounded }) => [
    along('raglan-depth', armhole.onPiece, 1, rounded.armhole),
    across('raglan-bind-off', armhole.pieceBindOff!, 1, byItself(armhole.bindOff!)),
  ],
  sleeveDimensions: ({ choices, sleeve, armhole }) => [
    along('sleeve-raglan-depth', sleeve!.above!, 1, byItself(sleeve!.above!, choices.made.sleeveRaglan)),
    across('cap-top-width', sleeve!.topEdge!, 0),
    equalTo(across('raglan-bind-off', armhole.bindOff!, 1), term(1, 'raglan-bind-off', 'back')),
  ],
  armholePath: (v, { armhole, body }, { panel, neck }) => {
    const underarm = v(body.pieceToUnderarm);
    return [
      [panel, underarm],
      [panel - v(armhole.pieceBindOff!), underarm],
      [neck, v(body.pieceLength)],
    ];
  },
  sleeveTopPath: slopedTopPath,
};
