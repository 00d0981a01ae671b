import { armholeSteps, bodySteps, widthSteps } from './body-shape.ts';
import type { Decisions } from './decisions.ts';
import { girthSteps } from './girths.ts';
import { lengthSteps } from './lengths.ts';
import { neckSteps } from './neck.ts';
import { sleeveSteps } from './sleeve-shape.ts';
import { Steps } from './steps.ts';
import { wearingSteps } from './wearing.ts';

/**
 * The whole model for what was decided: from measures, choices and rules to every finished measurement and every check's
 * need and have. An input that is not known is NaN, and so is all that needs it.
 */
export function modelOf(d: Decisions): Steps {
  const steps = new Steps();
  girthSteps(steps, d);
  lengthSteps(steps, d);
  widthSteps(steps, d);
  neckSteps(steps, d);
  armholeSteps(steps, d);
  bodySteps(steps, d);
  if (d.silhouette !== 'vest') sleeveSteps(steps, d);
  wearingSteps(steps, d);
  return steps;
}
