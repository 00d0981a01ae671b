import { BODY_DIMENSIONS, MEASURING_DIFFICULTY, type BodyDimension, type Figure } from '#body';
import { say } from '../messages.ts';

/** Measurements that only improve the estimates of others. A man's back length is taken to the hip, everyone else's to the waist. */
export const seldomNeeded = (figure: Figure): readonly BodyDimension[] => [
  'underbust-girth',
  'forearm-girth',
  'shoulder-length',
  'waist-to-hip',
  figure === 'man' ? 'back-waist-length' : 'back-hip-length',
];

/** The measurements in groups, from those that are easy to take alone to those that need a helper. */
export function measureGroups(
  figure: Figure,
): readonly { readonly title: string; readonly dimensions: readonly BodyDimension[] }[] {
  const { easy, steady, helper } = say.body.groups;
  const often = (Object.keys(MEASURING_DIFFICULTY) as BodyDimension[]).filter(
    (name) => !seldomNeeded(figure).includes(name),
  );
  return [easy, steady, helper].map((title, i) => ({
    title,
    dimensions: often.filter((name) => BODY_DIMENSIONS.includes(name) && MEASURING_DIFFICULTY[name] === i + 1),
  }));
}
