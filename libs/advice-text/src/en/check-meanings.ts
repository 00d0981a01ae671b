import type { CheckName } from '#fit';

/** What each check compares: it holds where `need` is at most `have`. */
export const checkMeanings: Readonly<Record<CheckName, string>> = {
  'head-through-neck': 'round the head, against the neck opening pulled open',
  'hand-through-cuff': 'round the hand with the thumb tucked in, against the cuff pulled open',
  'cuff-stays': 'the inside of the cuff, against the hand with the root of its thumb',
  'upper-arm': 'round the upper arm, against the inside of the sleeve',
  armhole: 'round the arm’s root, against the inside of the armhole',
  'over-the-shoulders': 'chest and raised arms, against the narrowest part of the body pulled open',
  hip: 'round the hip, against the inside of the hem',
  'negative-ease': 'the stretch the fit asks for, against the stretch the fabric has (ratios)',
  'neck-on-shoulders': 'the neck width, against what the shoulders can hold',
  'body-below-underarm': 'the least length below the underarm, against the length there is',
  'sleeve-below-underarm': 'the least sleeve below the underarm, against the length there is',
  'under-the-arm': 'how far the underarm seam is from the body’s own, against 50 mm',
  'neck-depth': 'how deep the neck is, against the bust line',
  'sleeve-taper': 'how fast the sleeve widens, against what works well (ratios)',
  'front-and-back': 'how much longer the front of the body is than its back, against what a straight front hides',
  seam: 'the difference of two edges that are joined, against what can be eased in',
  'nape-to-cuff': 'how far the made sleeve is off the body’s nape to cuff, against 10 mm',
  'along-the-top': 'how far the sleeve is from the body’s nape to cuff, against 50 mm',
  'raglan-slope': 'how far the raglan’s rise on the sleeve differs from that on the body, against a quarter (ratios)',
};
