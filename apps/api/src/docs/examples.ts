const body = {
  title: 'Me, in March',
  figure: 'woman',
  measures: [
    { name: 'chest-girth', value: 94, unit: 'cm' },
    { name: 'hip-girth', text: '39 in' },
    { name: 'back-waist-length', value: 43.7, unit: 'cm' },
    { name: 'nape-to-cuff', text: '29 1/4 in', how: 'home' },
  ],
};
const garment = {
  title: 'The blue one',
  construction: 'drop-shoulder',
  thickness: { value: 2.5, unit: 'mm' },
  measures: [
    { name: 'chest-width', text: '20 1/2 in' },
    { name: 'shoulder-to-hem', value: 58, unit: 'cm' },
    { name: 'sleeve-length', value: 47, unit: 'cm', from: 'seam' },
  ],
};
const fabric = { title: 'Grey, worsted', craft: 'crochet', thickness: { value: 6, unit: 'mm' } };
const design = {
  silhouette: 'pullover',
  construction: 'drop-shoulder',
  length: 'regular',
  neckline: 'crew',
  ease: { category: 'classic', place: 0.5 },
};
const id = '01900000-0000-7000-8000-000000000002';
const keep = { title: 'Grey pullover', bodyId: id, fabricId: id, design, unit: 'cm' };
const counts = {
  gauge: { main: { stitches: 14, rows: 18, over: { value: 10, unit: 'cm' } } },
  multiple: { main: [2, 1] },
  evenRows: true,
};
const planner = {
  title: 'Row by row',
  address: 'https://planner.example/take',
  takes: {
    unit: 'in',
    roundingStep: 0.25,
    format: 'flat',
    names: { 'back/width': '/back/wide', 'sleeve/sleeve-length': '/sleeve/tall' },
    required: ['back/width'],
  },
};

/** A body for each operation that takes one, by the operation's id. A test sends every one. */
export const EXAMPLES: Readonly<Record<string, object>> = {
  bodies_create: body,
  bodies_replace: body,
  garments_create: garment,
  garments_replace: garment,
  fabrics_create: fabric,
  fabrics_replace: fabric,
  Profile_compute: { body },
  Compute_compute: { title: 'Grey pullover', body, fabric, design, unit: 'cm' },
  Compute_run: { table: 'craft-yarn-council-woman', sizes: ['S', 'M'], fabric, design },
  Counts_compute: { request: { body, fabric, design, unit: 'cm' }, ...counts },
  Counts_count: counts,
  TargetSheets_keep: keep,
  Planners_create: planner,
  Planners_replace: planner,
  HandOffs_handOn: { plannerId: id },
  HandOffs_makeAndHandOn: keep,
  ReadKeys_make: { title: 'Row by row', expiresAt: '2999-01-31T18:30:00Z' },
};
