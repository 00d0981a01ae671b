import { times, type Quantity } from '#measure';
import type { Choices } from '../design/choices.ts';
import { CONSTRUCTIONS } from '../constructions/index.ts';
import type { GarmentModel } from '../model/garment-model.ts';
import type { SeamEdges } from '../messages/check-codes.ts';
import { INPUTS } from '../model/inputs.ts';

/** Which seams join pieces that are made already. */
export function madeSeams({ made, construction }: Choices): readonly SeamEdges[] {
  const { sleeveTopIs } = CONSTRUCTIONS[construction];
  const seams: readonly (readonly [SeamEdges, boolean])[] = [
    ['widths', made.back && made.front],
    ['armhole-and-top', made.armhole && made.sleeveTop && sleeveTopIs === 'seam'],
    ['armhole-and-cap', made.armhole && made.cap],
    ['raglan-edges', made.armhole && made.sleeveRaglan],
    ['armholes', made.frontArmhole],
    ['sides', made.frontToUnderarm],
  ];
  return seams.filter(([, compares]) => compares).map(([name]) => name);
}

/** The lengths of a seam's two edges, mm. */
export function edgesOf(seam: SeamEdges, { armhole, sleeve }: GarmentModel): readonly [Quantity, Quantity] {
  switch (seam) {
    case 'widths':
      return [INPUTS.madeBack, INPUTS.madeFront];
    case 'armhole-and-top':
      return [times(2, armhole.depth), sleeve!.top];
    case 'armhole-and-cap':
    case 'raglan-edges':
      return [armhole.seam, sleeve!.seam!];
    case 'armholes':
      return [INPUTS.madeArmhole, INPUTS.madeFrontArmhole];
    case 'sides':
      return [INPUTS.madeBodyToUnderarm, INPUTS.madeFrontToUnderarm];
  }
}
