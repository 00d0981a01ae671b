import { atLeast, hypot, leg, min, minus, plus, root, rootWithin, times, type Quantity } from '#measure';
import type { Choices } from '../design/choices.ts';
import { acrossGarment } from '../model/across.ts';
import { leastSeam, madeDepth } from '../model/armhole.ts';
import { armBands } from '../model/neck-band.ts';
import { INPUTS } from '../model/inputs.ts';
import { across, along, byItself, equalTo, term } from '../model/planned.ts';
import { fromAcrossBack } from '../model/ref-sleeve.ts';
import { girthTop } from '../model/sleeve.ts';
import type { Rules } from '../design/rules.ts';
import type { ConstructionModel } from './construction.ts';
import { slopedTopPath } from './sloped-top.ts';
import { armholeDimensions } from './straight-edge.ts';

/** Edge of half an armhole, underarm to shoulder: `ℓ = b + √((i − b)² + h²) + (A − h)`, `h = min(c·A, most)`. */
function armholeSeam(A: Quantity, i: Quantity, b: Quantity, rules: Rules): Quantity {
  const h = curveRise(A, rules);
  return plus(b, hypot(minus(i, b), h), minus(A, h));
}

/** h, how far the curve of an armhole rises. */
const curveRise = (A: Quantity, rules: Rules): Quantity =>
  min(times(rules['armhole-curve-share'], A), INPUTS.curveMost);

/** Edge of half a cap: `b + √((G/2 − b − c)² + H²) + c`, c half of its top edge. */
const capSeam = (H: Quantity, G: Quantity, b: Quantity, c: Quantity): Quantity =>
  plus(b, hypot(minus(times(0.5, G), b, c), H), c);

const halfCapTop = (G: Quantity, rules: Rules): Quantity => times(rules['cap-top-share'] / 2, G);

/** No armhole is deeper than this, mm. */
const DEEPEST = 10_000;

/** A as ruled, or deeper: its edge long enough for the arm, and, with a sleeve still to be made, for a cap of half its depth. */
function deepEnough(
  choices: Choices,
  ruled: Quantity,
  seamOf: (A: Quantity) => Quantity,
  leastCap: (A: Quantity) => Quantity,
): Quantity {
  const forArm = rootWithin(0, DEEPEST, (A) => minus(seamOf(A), leastSeam(choices)));
  const deep = atLeast(ruled, forArm);
  if (choices.silhouette === 'vest') return deep;
  return atLeast(
    deep,
    rootWithin(0, DEEPEST, (A) => minus(seamOf(A), leastCap(A))),
  );
}

/** An armhole with a curve, and a sleeve with a cap that is solved from its seam. */
export const setIn: ConstructionModel = {
  deeper: null,
  ruled: [
    { input: 'setInInsetLeast', rule: 'set-in-inset-least' },
    { input: 'curveMost', rule: 'armhole-curve-most' },
  ],
  madeNames: { depth: 'armhole-depth', rise: 'cap-height' },
  sleeveTopIs: 'girth',
  hasArmhole: true,
  comparesRises: false,
  hasAcrossBack: true,
  refSleeveNeeds: [],
  neckShare: () => 1,
  refNapeToCuff: fromAcrossBack,
  widths: (choices, girths) => {
    const { panel } = girths;
    const between = min(acrossGarment(choices, girths), minus(panel, times(2, INPUTS.setInInsetLeast)));
    return { between, inset: times(0.5, minus(panel, between)) };
  },
  armhole: (choices, before) => {
    const { rules, made, silhouette } = choices;
    const { neck, lengths } = before;
    const i = before.widths.inset!;
    const G = before.girths.sleeve;
    const ofInset = times(rules['bind-off-inset-share'], i);
    const b = silhouette === 'vest' ? ofInset : min(ofInset, times(rules['bind-off-sleeve-share'] / 2, G));
    const bands = times(armBands(choices), neck.band);
    const pieceBindOff = plus(b, bands);
    const seamOf = (A: Quantity): Quantity => armholeSeam(A, i, b, rules);
    const depth = made.armhole
      ? madeDepth(choices, before)
      : made.cap
        ? root(1, DEEPEST, (A) => minus(seamOf(A), capSeam(INPUTS.madeCap, G, b, halfCapTop(G, rules))))
        : deepEnough(choices, plus(lengths.armholeBase), seamOf, (A) =>
            capSeam(times(rules['cap-height-least-share'], A), G, b, halfCapTop(G, rules)),
          );
    const onPiece = plus(depth, bands);
    const rise = curveRise(depth, rules);
    return {
      depth,
      ...(!made.armhole && !made.cap && { ruledDepth: lengths.armholeBase }),
      onPiece,
      measuredFrom: 'shoulder',
      seam: armholeSeam(depth, i, minus(pieceBindOff, bands), rules),
      pieceEdge: plus(pieceBindOff, hypot(minus(i, b), rise), minus(onPiece, rise)),
      bindOff: b,
      pieceBindOff,
      fallShare: rules['shoulder-fall-share'],
      pieceNeck: neck.piece,
    };
  },
  sleeveTop: ({ rules, made }, { girths, armhole }) => {
    const G = girths.sleeve;
    const b = armhole.bindOff!;
    const c = halfCapTop(G, rules);
    const H = made.cap ? plus(INPUTS.madeCap) : leg(minus(armhole.seam, b, c), minus(times(0.5, G), b, c));
    return girthTop(G, H, { topEdge: times(2, c), seam: capSeam(H, G, b, c) });
  },
  bodyDimensions: (m, front) =>
    armholeDimensions(
      m,
      front,
      across('underarm-bind-off', m.armhole.pieceBindOff!, 0, byItself(m.armhole.bindOff!)),
      along('shoulder-fall', m.body.shoulderFall!, 0),
    ),
  sleeveDimensions: ({ choices, sleeve, armhole }) => [
    along('cap-height', sleeve!.above!, 1, byItself(sleeve!.above!, choices.made.cap)),
    across('cap-top-width', sleeve!.topEdge!, 0),
    equalTo(across('underarm-bind-off', armhole.bindOff!, 0), term(1, 'underarm-bind-off', 'back')),
  ],
  armholePath: (v, { armhole, body, choices }, { panel, edge }) => {
    const underarm = v(body.pieceToUnderarm);
    const { rules } = choices;
    const rise = Math.min(rules['armhole-curve-share'] * v(armhole.depth), rules['armhole-curve-most']);
    return [
      [panel, underarm],
      [panel - v(armhole.pieceBindOff!), underarm],
      [edge, underarm + rise],
      [edge, underarm + v(armhole.onPiece)],
    ];
  },
  sleeveTopPath: slopedTopPath,
};
