import { crossesItself } from './crossing-path.ts';
import { type Path, withoutRepeats } from '../model/path.ts';

/** Less than this is no length to draw, mm. */
export const LEAST_LENGTH = 1e-3;

/** Whether a path is the right half of a shape: it keeps to the right of the middle and does not cross itself. */
export function makesHalf(path: Path, middle: number): boolean {
  return path.every((point) => point[0] >= middle - 1e-9) && !crossesItself(withoutRepeats(path));
}
