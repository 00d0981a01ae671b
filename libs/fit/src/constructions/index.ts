import type { Construction } from '#garment';
import type { ConstructionModel } from './construction.ts';
import { dropShoulder } from './drop-shoulder.ts';
import { raglan } from './raglan.ts';
import { setIn } from './set-in.ts';
import { squaredDrop } from './squared-drop.ts';

/** Every construction with all that the model asks of it. */
export const CONSTRUCTIONS: Readonly<Record<Construction, ConstructionModel>> = {
  'drop-shoulder': dropShoulder,
  'squared-drop': squaredDrop,
  'set-in': setIn,
  raglan,
};
