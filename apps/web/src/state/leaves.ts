/** The leaves of the notebook, in the order in which they are filled in. One is open. */
export const LEAVES = ['body', 'garment', 'yarn', 'design', 'keep', 'made'] as const;
export type LeafName = (typeof LEAVES)[number];

/** The first part of the ids on each leaf, up to the hyphen. */
const BEGINNINGS: Readonly<Record<LeafName, readonly string[]>> = {
  body: ['body', 'measure'],
  garment: ['garment', 'flat'],
  yarn: ['yarn'],
  design: ['design', 'sheet', 'checks'],
  keep: ['keep', 'send'],
  made: ['made'],
};

/** The leaf that a fragment (`#measure-hip-girth`) is on; the first leaf where it names nothing. */
export function leafOf(hash: string): LeafName {
  const [beginning = ''] = hash.replace('#', '').split('-');
  return LEAVES.find((leaf) => BEGINNINGS[leaf].includes(beginning)) ?? LEAVES[0];
}
