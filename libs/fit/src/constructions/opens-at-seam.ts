import type { Choices } from '../design/choices.ts';
import { CONSTRUCTIONS } from './index.ts';

/** Whether a neck has a seam beside it that can open: a shoulder's, or that of a raglan with its sleeve. */
export const opensAtSeam = ({ silhouette, construction }: Pick<Choices, 'silhouette' | 'construction'>): boolean =>
  silhouette !== 'vest' || CONSTRUCTIONS[construction].hasArmhole;
