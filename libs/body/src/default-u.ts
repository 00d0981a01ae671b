import type { How } from '#measure';
import type { BodyDimension } from './body-dimension.ts';
import { DEFAULT_U } from './default-u-values.ts';

/** A standard uncertainty for a body dimension, mm (weight: g), and the publication or the mark it rests on. */
export interface DefaultU {
  readonly u: number;
  readonly source: string;
}

/**
 * The standard uncertainty of a body measure whose maker gave none, by how it was come by. mm; weight in g; always positive.
 * @example defaultU('chest-girth', 'home').u // 15
 */
export function defaultU(dimension: BodyDimension, how: How): DefaultU {
  const [u, source] = DEFAULT_U[how][dimension];
  return { u, source };
}
