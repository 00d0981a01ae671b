import type { BodyDimension } from '../body-dimension.ts';

/** How a measure is taken. `alone` 1: easy alone; 2: with a mirror or some care; 3: a second person is needed. */
export interface Taking {
  readonly how: string;
  readonly alone: 1 | 2 | 3;
}

/** In our own words; the landmarks are ISO 8559-1's (from memory), the ease of taking them alone is assumed. Easiest first. */
export const TAKING: Readonly<Record<BodyDimension, Taking>> = {
  stature: {
    how: 'Stand barefoot against a wall, a book flat on your head; mark its lower edge and measure to the floor.',
    alone: 1,
  },
  weight: { how: 'Step on the scales in light clothes.', alone: 1 },
  'wrist-girth': { how: 'Round the wrist, over the bone on the little finger’s side.', alone: 1 },
  'hand-girth': { how: 'Round the flat hand over the knuckles, without the thumb.', alone: 1 },
  'head-girth': { how: 'Round the head just above the brows and over the widest place behind.', alone: 1 },
  'waist-girth': {
    how: 'Round the narrowest place between ribs and hips; bend to one side to find it, breathe out gently.',
    alone: 1,
  },
  'hip-girth': { how: 'Round the fullest place of hips and seat, feet together, the tape level.', alone: 1 },
  'underbust-girth': { how: 'Round the body just below the bust, the tape level.', alone: 1 },
  'forearm-girth': { how: 'Round the fullest place of the forearm, the hand open.', alone: 1 },
  'upper-arm-girth': { how: 'Round the fullest place of the upper arm, the arm hanging loose.', alone: 1 },
  'chest-girth': {
    how: 'Round the fullest place of the bust or chest and level across the back; a mirror shows whether the tape has slipped.',
    alone: 2,
  },
  'neck-base-girth': {
    how: 'Round the foot of the neck, where a close necklace lies, over the bone at the nape.',
    alone: 2,
  },
  'underarm-length': { how: 'Along the inside of the arm from an inch below the armpit to the wrist bone.', alone: 2 },
  'shoulder-length': { how: 'From the side of the neck along the shoulder to its outer bone.', alone: 2 },
  'arm-length': { how: 'From the outer bone of the shoulder along the hanging arm to the wrist bone.', alone: 2 },
  'waist-to-hip': { how: 'Down the side from the waist to the fullest place of the hip.', alone: 2 },
  'front-waist-length': {
    how: 'From the side of the neck over the fullest place of the bust and down to the waist; a ribbon tied there marks it.',
    alone: 2,
  },
  'scye-girth': {
    how: 'Round the arm where it joins the body: over the shoulder bone and through the armpit.',
    alone: 2,
  },
  'nape-to-cuff': {
    how: 'From the bone at the nape over the shoulder and down the hanging arm to the wrist bone.',
    alone: 3,
  },
  'back-waist-length': {
    how: 'From the bone at the nape down the spine to the waist; a ribbon tied there marks it.',
    alone: 3,
  },
  'back-hip-length': { how: 'From the bone at the nape down the spine to the level of the fullest hip.', alone: 3 },
  'scye-depth': {
    how: 'From the bone at the nape down the spine to the level of the armpits; a belt under the arms marks it.',
    alone: 3,
  },
  'across-back': { how: 'Across the back from one outer shoulder bone to the other.', alone: 3 },
  'shoulder-girth': {
    how: 'Round both arms and the body at the widest place of the shoulders, arms hanging.',
    alone: 3,
  },
};
