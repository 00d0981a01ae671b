const cm = (name, value) => ({ name, value, unit: 'cm', how: 'home' });

/** A request for a sheet with 12 measurements. */
export const sheetRequest = {
  title: 'Twelve measurements',
  body: {
    figure: 'woman',
    age: 41,
    estimate: true,
    measures: [
      cm('stature', 168),
      cm('chest-girth', 94),
      cm('waist-girth', 79),
      cm('hip-girth', 99),
      cm('back-waist-length', 43.7),
      cm('across-back', 40.4),
      cm('nape-to-cuff', 74.3),
      cm('upper-arm-girth', 28),
      cm('wrist-girth', 16),
      cm('scye-depth', 18.4),
      cm('neck-base-girth', 37.1),
      cm('head-girth', 56.1),
    ],
  },
  fabric: { craft: 'knit', thickness: { value: 6, unit: 'mm' } },
  design: {
    silhouette: 'pullover',
    construction: 'set-in',
    length: 'regular',
    neckline: 'crew',
    basis: 'body',
    hem: 'straight',
    ease: { category: 'classic', place: 0.5 },
    band: { value: 25, unit: 'mm' },
  },
  unit: 'mm',
};
