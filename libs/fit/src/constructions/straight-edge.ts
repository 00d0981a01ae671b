import type { GarmentModel } from '../model/garment-model.ts';
import { across, along, equalTo, term, type PlannedOnPiece } from '../model/planned.ts';
import type { Path, ValueOf } from '../model/path.ts';
import type { SideOfBody } from './construction.ts';

/** The dimensions of an armhole with a shoulder above it, on a body piece. */
export function armholeDimensions(
  m: GarmentModel,
  front: boolean,
  ...between: readonly PlannedOnPiece[]
): PlannedOnPiece[] {
  const { armhole, body, choices, rounded } = m;
  const shoulders = body.shoulders!;
  const apart = choices.made.back && choices.made.front;
  const shoulder = apart ? (front ? shoulders.front : shoulders.back) : shoulders.onPiece;
  return [
    along('armhole-depth', armhole.onPiece, 1, rounded.armhole),
    equalTo(
      across('armhole-inset', shoulders.inset, 0, rounded.width!),
      term(0.5, 'width'),
      term(-0.5, 'cross-back-width'),
    ),
    ...between,
    equalTo(across('shoulder-width', shoulder, 1), term(0.5, 'cross-back-width'), term(-0.5, 'neck-width')),
  ];
}

export const straightArmholeDimensions = (m: GarmentModel, front: boolean): PlannedOnPiece[] =>
  armholeDimensions(m, front);

/** In from the side to the armhole's edge, and straight up. */
export function straightArmholePath(v: ValueOf, { armhole, body }: GarmentModel, { panel, edge }: SideOfBody): Path {
  const underarm = v(body.pieceToUnderarm);
  return [
    [panel, underarm],
    [edge, underarm],
    [edge, underarm + v(armhole.onPiece)],
  ];
}

/** A sleeve's straight sides above the underarm, and its top. */
export function straightTopPath(v: ValueOf, { sleeve }: GarmentModel, middle: number): Path {
  const side = middle + v(sleeve!.top) / 2;
  return [
    [side, v(sleeve!.underarmSeam)],
    [side, v(sleeve!.length)],
    [middle, v(sleeve!.length)],
  ];
}
