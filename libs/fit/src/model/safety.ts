import { hypot, max, plus, times, type Quantity } from '#measure';
import type { Rules } from '../design/rules.ts';

/**
 * What is made for the head or the hand is made for a little more, so that a default leaves little chance that it does not pass:
 * `r(need) = max(1.02 need, need + 1.75 √(u² + (0.01 need)²))`, u the need's own standard uncertainty. mm
 */
export const withSafety = (need: Quantity, u: Quantity, rules: Rules): Quantity =>
  max(
    times(rules['safety-share'], need),
    plus(need, times(rules['safety-factor'], hypot(u, times(rules.making, need)))),
  );
