import type { TextCodes } from '../texts.ts';
import type { Catalogue } from '../catalogue.ts';

/** How each dimension of the body is measured, in our own words; the landmarks are ISO 8559-1's (from memory). */
export const howToMeasure: Catalogue<TextCodes['howToMeasure']> = {
  stature: () =>
    'Stand barefoot against a wall, a book flat on your head; mark its lower edge and measure to the floor.',
  weight: () => 'Step on the scales in light clothes.',
  'wrist-girth': () => 'Round the wrist, over the bone on the little finger’s side.',
  'hand-girth': () => 'Round the flat hand over the knuckles, without the thumb.',
  'head-girth': () => 'Round the head just above the brows and over the widest place behind.',
  'waist-girth': () =>
    'Round the narrowest place between ribs and hips; bend to one side to find it, breathe out gently.',
  'hip-girth': () => 'Round the fullest place of hips and seat, feet together, the tape level.',
  'underbust-girth': () => 'Round the body just below the bust, the tape level.',
  'forearm-girth': () => 'Round the fullest place of the forearm, the hand open.',
  'upper-arm-girth': () => 'Round the fullest place of the upper arm, the arm hanging loose.',
  'chest-girth': () =>
    'Round the fullest place of the bust or chest and level across the back; a mirror shows whether the tape has slipped.',
  'neck-base-girth': () => 'Round the foot of the neck, where a close necklace lies, over the bone at the nape.',
  'underarm-length': () => 'Along the inside of the arm from an inch below the armpit to the wrist bone.',
  'shoulder-length': () => 'From the side of the neck along the shoulder to its outer bone.',
  'arm-length': () => 'From the outer bone of the shoulder along the hanging arm to the wrist bone.',
  'waist-to-hip': () => 'Down the side from the waist to the fullest place of the hip.',
  'front-waist-length': () =>
    'From the side of the neck over the fullest place of the bust and down to the waist; a ribbon tied there marks it.',
  'scye-girth': () => 'Round the arm where it joins the body: over the shoulder bone and through the armpit.',
  'nape-to-cuff': () => 'From the bone at the nape over the shoulder and down the hanging arm to the wrist bone.',
  'back-waist-length': () => 'From the bone at the nape down the spine to the waist; a ribbon tied there marks it.',
  'back-hip-length': () => 'From the bone at the nape down the spine to the level of the fullest hip.',
  'scye-depth': () =>
    'From the bone at the nape down the spine to the level of the armpits; a belt under the arms marks it.',
  'across-back': () => 'Across the back from one outer shoulder bone to the other.',
  'shoulder-girth': () => 'Round both arms and the body at the widest place of the shoulders, arms hanging.',
};
