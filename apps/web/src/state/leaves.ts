/** The leaves of the notebook, in the order in which they are written on. One lies open. */
export const LEAVES = ['body', 'garment', 'yarn', 'design', 'keep', 'made'] as const;
export type LeafName = (typeof LEAVES)[number];

/** What an id on each leaf begins with, up to its first hyphen. */
const BEGINNINGS: Readonly<Record<LeafName, readonly string[]>> = {
  body: ['body', 'measure'],
  garment: ['garment', 'flat'],
  yarn: ['yarn'],
  design: ['design', 'sheet', 'checks'],
  keep: ['keep', 'send'],
  made: ['made'],
};

/** The leaf that an address within the page (`#measure-hip-girth`) lies on; the first where it names nothing. */
export function leafOf(hash: string): LeafName {
  const [beginning = ''] = hash.replace('#', '').split('-');
  return LEAVES.find((leaf) => BEGINNINGS[leaf].includes(beginning)) ?? LEAVES[0];
}
