import type { YarnWeight } from './yarn-weights.ts';

/** Metres in 100 g of a yarn of each category, 0 (lace) to 7 (jumbo), as labels have them (memory). */
const METRES_PER_100_G = [800, 400, 320, 260, 200, 120, 80, 45];

/** Metres in 100 g that are usual for a category. */
export const usualMetres = ({ category }: YarnWeight): number => METRES_PER_100_G[category]!;
