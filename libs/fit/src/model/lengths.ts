import { minus, plus, times, type Quantity } from '#measure';
import type { Choices } from '../design/choices.ts';
import type { Girths } from './girths.ts';
import { INPUTS } from './inputs.ts';
import { moreEase } from './more-ease.ts';

const { thickness: t, ordinaryThickness: t0, refThickness, layer: s, refLayer } = INPUTS;

/** mm */
export interface Lengths {
  /** A₀: a set-in armhole's depth, which the other constructions' are said from. */
  readonly armholeBase: Quantity;
  /** L as asked for: finished back neck edge to hem. */
  readonly asked: Quantity;
  readonly napeToCuff: Quantity;
}

/** `refNapeToCuff` is the garment's that fits, as its construction gives it. */
export function lengths(choices: Choices, { ease }: Girths, refNapeToCuff: Quantity): Lengths {
  return {
    armholeBase: armholeBase(choices, ease),
    asked: askedLength(choices),
    // A quantity of its own, which can be rounded.
    napeToCuff: plus(choices.kept.napeToCuff ? refNapeToCuff : INPUTS.napeToCuff),
  };
}

/**
 * `A₀ = scye depth + room + c·E + (π/2)(t − t₀) + πs`; the last two keep the armhole's inner perimeter. A garment's armhole
 * gives it less its own construction's constant.
 */
function armholeBase(choices: Choices, ease: Quantity): Quantity {
  const { kept, rules, layer, refLayer: refReach } = choices;
  const c = rules['armhole-ease'];
  const quarter = Math.PI / 2;
  if (!kept.armhole)
    return plus(
      INPUTS.scyeDepth,
      INPUTS.armholeRoom,
      times(c, ease),
      times(quarter, minus(t, t0)),
      times(Math.PI * layer.arm, s),
    );
  return plus(
    minus(INPUTS.refArmhole, INPUTS.refDeeper),
    moreEase(choices, 'armhole', c),
    times(quarter, minus(t, refThickness)),
    minus(times(Math.PI * layer.arm, s), times(Math.PI * refReach.arm, refLayer)),
  );
}

function askedLength(choices: Choices): Quantity {
  const { length, kept, lengthFrom } = choices;
  if (length === 'custom') return plus(INPUTS.customLength);
  if (kept.length) return minus(INPUTS.refShoulderToHem, refBackNeck(choices));
  switch (lengthFrom) {
    case 'hip':
      return plus(INPUTS.backHip, INPUTS.lengthOffset);
    case 'hip-below-waist':
      return plus(INPUTS.backWaist, INPUTS.hipBelowWaist, INPUTS.lengthOffset);
    case 'waist':
      return plus(INPUTS.backWaist, INPUTS.lengthOffset);
  }
}

/** Back neck depth of the garment that fits; where it was not measured, about that of a crew on its wearer. */
const refBackNeck = ({ kept, rules }: Pick<Choices, 'kept' | 'rules'>): Quantity =>
  kept.fromBackNeck
    ? INPUTS.refBackNeck
    : plus(times(rules['crew-back-share'], INPUTS.neckBase), INPUTS.refBackNeckOff);
