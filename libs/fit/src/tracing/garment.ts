import { minus, plus, times } from '#measure';
import type { Choices } from '../design/choices.ts';
import { CONSTRUCTIONS } from '../constructions/index.ts';
import type { Armhole, BeforeArmhole } from '../model/armhole.ts';
import { body as bodyOf, type Body } from '../model/body.ts';
import type { GarmentModel, RoundedNumbers } from '../model/garment-model.ts';
import { girths as girthsOf } from '../model/girths.ts';
import { lengths as lengthsOf } from '../model/lengths.ts';
import { crewWidth, neckBand } from '../model/neck-band.ts';
import { INPUTS } from '../model/inputs.ts';
import { neck as neckOf } from '../model/neck.ts';
import { opening as openingOf, timesOfOpening, type Opening } from '../model/opening.ts';
import { byItself, type Rounded } from '../model/planned.ts';
import { sleeve as sleeveOf, type Sleeve } from '../model/sleeve.ts';

/** The formulas of a garment, from its girths to its sleeve. */
export function garmentModel(choices: Choices): GarmentModel {
  const construction = CONSTRUCTIONS[choices.construction];
  const girths = girthsOf(choices);
  const lengths = lengthsOf(choices, girths, CONSTRUCTIONS[choices.ref.construction].refNapeToCuff(choices));
  const widths = construction.widths(choices, girths);
  const band = neckBand(choices, widths.between, crewWidth(INPUTS.crewRoom));
  const neck = neckOf(choices, widths.between, band, construction.neckShare(choices.rules));
  const before = { girths, lengths, widths, neck };
  const armhole = construction.armhole(choices, before);
  const body = bodyOf(choices, before, armhole);
  const opening = openingIn(choices, before, armhole, body);
  const sleeve =
    choices.silhouette === 'vest'
      ? null
      : sleeveOf(
          choices,
          {
            girths,
            lengths,
            between: widths.between ?? neck.piece.width,
            underarmBelowNape: body.underarmBelowNape,
          },
          construction.sleeveTop(choices, { girths, armhole, inset: widths.inset }),
        );
  return {
    choices,
    ...before,
    armhole,
    body,
    opening,
    headPasses: plus(neck.passes, ...(opening ? timesOfOpening(choices.opening.at, opening.length) : [])),
    sleeve,
    rounded: roundedNumbers(choices, before, armhole, body, sleeve),
  };
}

/** A raglan opens along half of its depth; a vest of that construction has no seam there. */
function openingIn(choices: Choices, { neck }: BeforeArmhole, armhole: Armhole, body: Body): Opening | null {
  const { shoulders } = body;
  const raglan = choices.silhouette === 'vest' ? null : times(0.5, armhole.depth);
  return openingOf(choices, {
    passes: neck.passes,
    head: neck.head,
    seam: shoulders ? shoulders.onPiece : raglan,
    back: minus(body.length, body.rib),
    front: minus(body.shoulderToHem, neck.front, body.rib),
  });
}

function roundedNumbers(
  { construction, made, bandless }: Choices,
  { girths, widths, neck }: BeforeArmhole,
  armhole: Armhole,
  { length }: Body,
  sleeve: Sleeve | null,
): RoundedNumbers {
  const seamTop = CONSTRUCTIONS[construction].sleeveTopIs === 'seam';
  const chest: Rounded = { quantity: girths.mid, range: 'band', fixed: made.back || made.front };
  const depthFixed = made.armhole || made.cap || made.sleeveRaglan || (made.sleeveTop && seamTop);
  const depth = byItself(armhole.depth, depthFixed);
  return {
    chest,
    hem: girths.hemFlat === girths.bodyFlat ? chest : byItself(girths.hemFlat),
    // Where the body goes straight up, the width between the armholes is the panel's.
    width: widths.between && (widths.straight ? chest : byItself(widths.between)),
    armhole: depth,
    length: byItself(length, made.bodyToUnderarm),
    neckWidth: byItself(neck.width, made.neckWidth),
    // Without a band the neck stretches as its fabric does: none becomes some, or some none, by no rounding.
    band: { quantity: neck.band, range: 'depth', fixed: bandless },
    sleeveTop: seamTop ? depth : byItself(girths.sleeve, made.sleeveTop),
    sleeve: sleeve && roundedSleeve(made, sleeve),
  };
}

function roundedSleeve(made: Choices['made'], sleeve: Sleeve): NonNullable<RoundedNumbers['sleeve']> {
  const length = byItself(sleeve.length, made.sleeve);
  return {
    length,
    underarmSeam: sleeve.above === null ? length : byItself(sleeve.underarmSeam),
    cuff: byItself(sleeve.cuff, made.cuff),
  };
}
