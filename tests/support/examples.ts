/** The body of the worked examples, as a maker would give it (cm; nape to cuff in inches would not be exact). */
export const exampleBody = {
  figure: 'woman',
  age: null,
  estimate: true,
  measures: [
    { name: 'chest-girth', value: 94, unit: 'cm', how: 'home', u: 1.5 },
    { name: 'hip-girth', value: 99, unit: 'cm' },
    { name: 'back-waist-length', value: 43.7, unit: 'cm' },
    { name: 'across-back', value: 40.4, unit: 'cm' },
    { name: 'nape-to-cuff', value: 74.3, unit: 'cm' },
    { name: 'upper-arm-girth', value: 28, unit: 'cm' },
    { name: 'wrist-girth', value: 16, unit: 'cm' },
    { name: 'scye-depth', value: 18.4, unit: 'cm' },
    { name: 'neck-base-girth', value: 37.1, unit: 'cm' },
    { name: 'head-girth', value: 56.1, unit: 'cm' },
  ],
};

export const exampleFabric = { craft: 'knit', thickness: { value: 6, unit: 'mm' } };

export const exampleGarment = {
  title: 'The blue one',
  construction: 'drop-shoulder',
  thickness: { text: '2.5 mm' },
  measures: [
    { name: 'chest-width', text: '20 1/2 in' },
    { name: 'shoulder-to-hem', value: 58, unit: 'cm' },
    { name: 'sleeve-length', value: 47, unit: 'cm', from: 'seam' },
  ],
};

export const exampleDesign = {
  silhouette: 'pullover',
  construction: 'drop-shoulder',
  length: 'regular',
  neckline: 'crew',
  basis: 'body',
  hem: 'straight',
  ease: { category: 'classic', place: 0.5 },
  band: { value: 25, unit: 'mm' },
};

/** A whole request: the worked example 1. */
export const exampleRequest = { body: exampleBody, garment: null, fabric: exampleFabric, design: exampleDesign };
