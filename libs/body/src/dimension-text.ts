import { BODY_DIMENSIONS, type BodyDimension } from './body-dimension.ts';

const WORDS = Object.fromEntries(BODY_DIMENSIONS.map((name) => [name, name.replaceAll('-', ' ')])) as Readonly<
  Record<BodyDimension, string>
>;

/** A dimension's name as words: "nape to cuff". */
export const dimensionText = (name: BodyDimension): string => WORDS[name];

/** "stature, chest girth and hip girth" */
export function listText(names: readonly BodyDimension[]): string {
  const words = names.map(dimensionText);
  return words.length < 2 ? words.join('') : `${words.slice(0, -1).join(', ')} and ${words.at(-1)}`;
}
