import type { Path, Point } from '../model/path.ts';

/** Straight pieces that a neck's curve is drawn with, over a quarter of an ellipse. */
const CURVE_STEPS = 12;

/** Places on a quarter of a circle of radius 1, from its right end to its lowest point. */
const QUARTER: Path = Array.from({ length: CURVE_STEPS + 1 }, (_, k): Point => {
  const angle = (Math.PI / 2) * (k / CURVE_STEPS);
  return [Math.cos(angle), Math.sin(angle)];
});

/** Right half of a neck, from its high point down to the middle: a quarter ellipse, or a V's straight side. */
export function neckPath(
  middle: number,
  { half, top, depth }: { readonly half: number; readonly top: number; readonly depth: number },
  straight: boolean,
): Path {
  if (straight)
    return [
      [middle + half, top],
      [middle, top - depth],
    ];
  return QUARTER.map((place): Point => [middle + half * place[0], top - depth * place[1]]);
}
