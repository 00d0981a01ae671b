import type { Rules } from './rules.ts';
import { crossing } from './root.ts';

/** Edge of half an armhole, underarm to shoulder, mm: the bind-off, a slope, the straight rest. */
export function armholeSeam(armhole: number, inset: number, bindOff: number, rules: Rules): number {
  const rise = Math.min(rules['armhole-curve-share'] * armhole, rules['armhole-curve-most']);
  const across = inset - bindOff;
  return bindOff + Math.sqrt(across * across + rise * rise) + (armhole - rise);
}

/** The armhole depth whose half edge is `seam` long, mm; NaN where none is. */
export function armholeForSeam(seam: number, inset: number, bindOff: number, rules: Rules): number {
  const spare = (armhole: number): number => armholeSeam(armhole, inset, bindOff, rules) - seam;
  const least = spare(1);
  if (!(least < 0)) return NaN;
  const most = seam + rules['armhole-curve-most'];
  return crossing([1, least], [most, spare(most)], spare);
}

/** Half of a cap's top edge, mm. */
function capTop(top: number, rules: Rules): number {
  return (rules['cap-top-share'] * top) / 2;
}

/** Edge of half a cap, mm: the bind-off, a slope, half the top edge. */
export function capSeam(cap: number, top: number, bindOff: number, rules: Rules): number {
  const half = capTop(top, rules);
  const across = top / 2 - bindOff - half;
  return bindOff + Math.sqrt(across * across + cap * cap) + half;
}

/** The cap height whose half edge is `seam` long, mm; NaN where the sleeve is too wide for the armhole. */
export function capForSeam(seam: number, top: number, bindOff: number, rules: Rules): number {
  const half = capTop(top, rules);
  const slope = seam - bindOff - half;
  const across = top / 2 - bindOff - half;
  return slope > 0 ? Math.sqrt(slope * slope - across * across) : NaN;
}
