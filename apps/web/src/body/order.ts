import type { BodyDimension, Figure } from '#body';
import { say } from '../messages.ts';

/** The measures in the order in which they are easy to take alone. */
export function measureGroups(
  figure: Figure,
): readonly { readonly title: string; readonly dimensions: readonly BodyDimension[] }[] {
  const length: BodyDimension = figure === 'man' ? 'back-hip-length' : 'back-waist-length';
  return [
    { title: say.body.groups.easy, dimensions: ['stature', 'weight', 'chest-girth', 'waist-girth', 'hip-girth', 'head-girth', 'wrist-girth', 'hand-girth'] },
    { title: say.body.groups.steady, dimensions: ['upper-arm-girth', 'neck-base-girth', 'underarm-length', 'front-waist-length'] },
    { title: say.body.groups.helper, dimensions: [length, 'nape-to-cuff', 'across-back', 'scye-depth', 'arm-length', 'shoulder-girth', 'scye-girth'] },
  ]; // prettier-ignore
}

/** Those that only sharpen the estimates of others. */
export const seldomNeeded = (figure: Figure): readonly BodyDimension[] => [
  'underbust-girth',
  'forearm-girth',
  'shoulder-length',
  'waist-to-hip',
  figure === 'man' ? 'back-waist-length' : 'back-hip-length',
];
