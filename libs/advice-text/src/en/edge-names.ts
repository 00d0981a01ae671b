import type { SeamEdges } from '#fit';

/** Two edges that are joined. */
export const edgeNames: Readonly<Record<SeamEdges, string>> = {
  widths: 'the widths of back and front',
  'armhole-and-top': 'the armhole and the top of the sleeve',
  'armhole-and-cap': 'the armhole and the cap of the sleeve',
  'raglan-edges': 'the slanted edges of the body and the sleeve',
  armholes: 'the armholes of back and front',
  sides: 'the sides of back and front',
};
