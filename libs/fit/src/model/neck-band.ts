import { atLeast, atMost, max, min, minus, plus, positive, times, type Quantity } from '#measure';
import type { Choices } from '../design/choices.ts';
import { INPUTS } from './inputs.ts';

const { acrossBack, neckBase, neckFromShoulders, thickness: t } = INPUTS;

/** An own band leaves this share of what the shoulders keep beside a neck (assumed): a band as deep as the neck leaves no shoulder. */
const LEFT_BY_OWN_BAND = 1 / 3;
/** And of a raglan this share of its depth (assumed). */
const OWN_BAND_OF_RAGLAN = 0.5;

/** What carries a neck: the across back, or what lies between the armhole edges where that is less. mm */
export const carriersOf = (between: Quantity | null): Quantity =>
  between === null ? acrossBack : min(acrossBack, between);

/** The width of a crew by its rule, `NB/π + 25κ`: no neck is made narrower for its shoulders. mm */
export const crewWidth = (room: Quantity): Quantity => plus(times(1 / Math.PI, neckBase), room);

/** A vest's armholes have bands of their own: 1, else 0. */
export const armBands = ({ silhouette }: Choices): 0 | 1 => (silhouette === 'vest' ? 1 : 0);

/** How many bands lie beside a neck: its own two, and a vest's two at the armholes. */
export const bandsBeside = (choices: Choices): 2 | 4 => (armBands(choices) ? 4 : 2);

/**
 * β, the depth of the neck band, and of a vest's armhole bands. By its rule `max(25κ½, min(4t, 35κ))`, so that a thick yarn has some rows to
 * make a band of, but never so deep that the shoulders of a crew go: `(min(S, Y) − w − 60κ)/2`, of a vest /4, at least 10κ½. The maker's own
 * only ends where it would leave no shoulder. mm
 */
export function neckBand(choices: Choices, between: Quantity | null, crew: Quantity): Quantity {
  const { rules } = choices;
  const carriers = carriersOf(between);
  const leaving = (width: Quantity, kept: number): Quantity =>
    times(1 / bandsBeside(choices), minus(carriers, width, times(kept, neckFromShoulders)));
  if (choices.own.band) {
    const width = choices.ownNeck.width ? max(crew, INPUTS.ownNeckWidth) : crew;
    const beside = leaving(width, LEFT_BY_OWN_BAND);
    const most = between === null ? min(beside, times(OWN_BAND_OF_RAGLAN, INPUTS.scyeDepth)) : beside;
    return atMost(INPUTS.ownBand, positive(most));
  }
  const ruled = max(INPUTS.bandDepth, min(times(rules['band-thicknesses'], t), INPUTS.bandMost));
  return between === null ? ruled : atLeast(atMost(ruled, leaving(crew, 1)), INPUTS.bandLeast);
}

/** Depth of the rib at hem and cuff: `max(50κ½, min(7t, 70κ))`, less where a short body has not 20κ beside it, at least 20κ½. mm */
export function ribDepth({ own, rules }: Choices, belowUnderarm: Quantity): Quantity {
  if (own.rib) return plus(INPUTS.ownRib);
  const ruled = max(INPUTS.ribDepth, min(times(rules['rib-thicknesses'], t), INPUTS.ribMost));
  return atLeast(atMost(ruled, minus(belowUnderarm, INPUTS.bodyBelow)), INPUTS.ribLeast);
}
