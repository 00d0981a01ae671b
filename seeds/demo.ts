/**
 * The demo scenario, invented: a maker at home with a tape, her favourite knitted sweater, two yarns and a niece of six.
 * Every entry is a request as the API takes it.
 */

const maker = {
  title: 'The maker',
  figure: 'woman',
  age: 41,
  estimate: true,
  measures: [
    { name: 'stature', value: 168, unit: 'cm' },
    { name: 'chest-girth', text: '37 1/2 in' },
    { name: 'waist-girth', text: '31 in' },
    { name: 'hip-girth', text: '40 1/4 in' },
    { name: 'back-waist-length', value: 41.5, unit: 'cm' },
    { name: 'across-back', value: 39.5, unit: 'cm' },
    { name: 'nape-to-cuff', text: '29 in' },
    { name: 'upper-arm-girth', value: 29.5, unit: 'cm' },
    { name: 'wrist-girth', value: 16, unit: 'cm' },
    { name: 'scye-depth', value: 18.5, unit: 'cm' },
    { name: 'neck-base-girth', value: 38, unit: 'cm' },
    { name: 'head-girth', value: 56, unit: 'cm' },
    { name: 'hand-girth', value: 19.5, unit: 'cm' },
  ],
};

const niece = {
  title: 'The niece',
  figure: 'child',
  age: 6,
  estimate: true,
  measures: [
    { name: 'chest-girth', value: 62, unit: 'cm' },
    { name: 'back-waist-length', value: 26.5, unit: 'cm' },
    { name: 'nape-to-cuff', value: 51, unit: 'cm' },
  ],
};

const favourite = {
  title: 'The green one',
  construction: 'set-in',
  thickness: { value: 2.5, unit: 'mm' },
  measures: [
    { name: 'chest-width', value: 50.5, unit: 'cm' },
    { name: 'hem-width', value: 49, unit: 'cm' },
    { name: 'shoulder-to-hem', value: 59.5, unit: 'cm' },
    { name: 'back-neck-depth', value: 2, unit: 'cm' },
    { name: 'cross-back-width', value: 40.5, unit: 'cm' },
    { name: 'armhole-depth', value: 20, unit: 'cm' },
    { name: 'sleeve-top-width', value: 16.5, unit: 'cm' },
    { name: 'sleeve-length', value: 53, unit: 'cm', from: 'seam' },
    { name: 'cuff-width', value: 9, unit: 'cm' },
  ],
  wears: { chest: 'right', sleeve: 'right' },
};

const bulkyWool = {
  title: 'Bulky grey wool, hook 7',
  craft: 'crochet',
  thickness: { value: 6.5, unit: 'mm' },
  stretch: { across: 0.12, along: 0.08 },
  growth: { across: 0.01, along: 0.03 },
  gramsPerSquareMetre: 760,
};

const lightWool = {
  title: 'Light blue wool, needles 4',
  craft: 'knit',
  weightCategory: 3,
  ribStretch: 0.9,
};

/** Bodies, garments and fabrics, for a page that offers to load them. */
export const demoRecords = { bodies: [maker, niece], garments: [favourite], fabrics: [bulkyWool, lightWool] };

/** Whole requests for `POST /v1/target-sheets/compute`; the first is the one `npm start` prints. */
export const demoRequests = [
  {
    title: 'Regular sweater in light wool, knitted',
    body: maker,
    fabric: lightWool,
    design: {
      silhouette: 'pullover',
      construction: 'set-in',
      length: 'regular',
      neckline: 'crew',
      basis: 'body',
      hem: 'straight',
      ease: { category: 'classic', place: 0.5 },
    },
    unit: 'cm',
  },
  {
    title: 'Cropped sweater in bulky wool, crocheted',
    body: maker,
    garment: favourite,
    fabric: bulkyWool,
    design: {
      silhouette: 'pullover',
      construction: 'drop-shoulder',
      length: 'cropped',
      neckline: 'v',
      basis: 'body',
      hem: 'straight',
      ease: { category: 'loose', place: 0.25 },
    },
    unit: 'in',
  },
  {
    title: 'Like the green one, in bulky wool',
    body: maker,
    garment: favourite,
    fabric: bulkyWool,
    design: {
      silhouette: 'pullover',
      construction: 'set-in',
      length: 'regular',
      neckline: 'crew',
      basis: 'garment',
      hem: 'straight',
      ease: { as: 'garment' },
    },
    unit: 'cm',
  },
  {
    title: 'Cardigan for the niece',
    body: niece,
    fabric: lightWool,
    design: {
      silhouette: 'cardigan',
      construction: 'raglan',
      length: 'regular',
      neckline: 'crew',
      basis: 'body',
      hem: 'straight',
      ease: { category: 'classic', place: 0.75 },
    },
    unit: 'cm',
  },
];
