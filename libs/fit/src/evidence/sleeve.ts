import type { Observation } from '#body';
import type { Rules } from '../design/rules.ts';
import { OF_CONSTRUCTION } from './of-construction.ts';
import { regionEase } from './region.ts';
import type { Sweater } from './sweater.ts';

/** The own spread of a sleeve about the way from nape to cuff, mm (assumed). */
const TAU = 20;

/**
 * What a long sleeve tells: with the way from the centre back to its seam it is nape to cuff. Null where that way is not known. Its u is the sleeve's own: that of
 * the width, which it shares with the chest, is small beside τ.
 */
export function sleeveObservation(sweater: Sweater, sized: Rules): ((ease: string) => Observation) | null {
  const sleeve = sweater.values['sleeve-length'];
  const seam =
    sweater.sleeveFrom === 'centre-back'
      ? { length: 0, acrossBack: 0, ease: 0 }
      : OF_CONSTRUCTION[sweater.construction].seam(sweater);
  if (sleeve === undefined || seam === null || sweater.sleeve !== 'long') return null;
  const { spread } = regionEase(sweater, 'sleeve', 0, sized);
  return (ease) => ({
    id: 'sleeve-length',
    source: sweater.name,
    dimensions: {
      'nape-to-cuff': 1,
      ...(seam.acrossBack !== 0 && { 'across-back': -seam.acrossBack }),
    },
    hidden: seam.ease === 0 ? {} : { [ease]: -seam.ease },
    constant: 0,
    observed: seam.length + sleeve.value,
    tau: spread * TAU,
    u: sleeve.u,
    ...(sleeve.confirmed && { confirmed: true }),
  });
}
