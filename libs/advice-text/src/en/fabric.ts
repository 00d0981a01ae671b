import type { FabricNoteCodes, FabricSourceCodes, Stitch } from '#fabric';
import type { Catalogue } from '../catalogue.ts';
import { say } from '../say.ts';
import { commonSources } from './common-sources.ts';

export const HOW_TO_MEASURE_THICKNESS =
  'Lay four layers of the swatch under a small book, measure their height and divide by four.';

const STITCHES: Readonly<Record<Stitch, string>> = {
  stockinette: 'stockinette',
  'single-crochet': 'single crochet',
};

/** What a fabric's thickness, or a note about it, is from. */
export const fabricSources: Catalogue<FabricSourceCodes> = {
  ...commonSources,
  'four-layers': () => 'measured, four layers divided by four',
  wraps: ({ wrapsPerInch, stitch }) => `${wrapsPerInch} wraps per inch, ${STITCHES[stitch]}`,
  'yarn-length': ({ metresPer100g, fibre, stitch }) => `${metresPer100g} m per 100 g of ${fibre}, ${STITCHES[stitch]}`,
  'weight-category': ({ category, name, stitch }) => `weight ${category} (${name}), ${STITCHES[stitch]}`,
  'swatch-weight': () => 'the swatch’s weight and sides',
  'yarn-on-label': ({ metresPer100g }) =>
    `${metresPer100g} m per 100 g and the usual density of a fabric of such a yarn`,
  'usual-yarn': ({ category, name, metresPer100g }) =>
    `rough: what is usual for weight ${category} (${name}), about ${metresPer100g} m per 100 g`,
  'usual-density': ({ thicknessMm }) =>
    `rough: the usual density of a fabric ${Number(thicknessMm.toPrecision(2))} mm thick`,
  calibrated: () => 'calibrated on the expected thicknesses, from memory',
};

function bandsText({ wrapsPerInch, weights }: FabricNoteCodes['wraps-bands']): string {
  const names = weights.map(({ category, name }) => `${category} (${name})`);
  const bands =
    names.length === 0
      ? 'no weight’s band'
      : names.length === 1
        ? `the band of weight ${names[0]}`
        : `the bands of weights ${names.join(', ')}, which overlap`;
  return `${wrapsPerInch} wraps per inch lie in ${bands}.`;
}

/** What there is to know about a fabric. */
export const fabricNotes: Catalogue<FabricNoteCodes> = {
  'growth-unknown': () =>
    'No swatch was measured before and after washing, so the fabric is taken not to grow or shrink. Wash and hang a swatch, and measure it both times.',
  'rib-assumed': () =>
    'The stretch of the rib was not measured; the usual for the craft is taken. Pull a finished strip of rib along a ruler to measure it.',
  'stretch-assumed': () =>
    'The stretch of the fabric was not measured; the usual for the craft is taken. Pull the swatch across: one that hardly gives asks for more room.',
  'thickness-doubtful': ({ thicknessMm, times, yarn }, reader) => {
    const slip =
      times > 1
        ? 'If it is of four layers, divide it by four.'
        : 'If it was divided by four already, give it as it was.';
    return `The thickness, ${thicknessMm} mm, is ${times.toFixed(1)} times what the yarn (${say(fabricSources, yarn, reader)}) gives. It is used as measured. ${slip}`;
  },
  'thickness-from-yarn': ({ yarn }, reader) =>
    `The fabric’s thickness is reckoned from the yarn (${say(fabricSources, yarn, reader)}) and may be a quarter off. ${HOW_TO_MEASURE_THICKNESS}`,
  'thickness-from-category': ({ yarn, fromMm, toMm, assumed }, reader) => {
    const guess = assumed ? 'no table has this weight, so it is assumed' : 'the middle of what is usual for it';
    return `The fabric’s thickness is taken from the yarn’s ${say(fabricSources, yarn, reader)}: ${guess}, ${fromMm} to ${toMm} mm. ${HOW_TO_MEASURE_THICKNESS} Wraps per inch are better than a category, too.`;
  },
  'yarn-spare': ({ grams, share, allDrawn }) =>
    `${allDrawn ? '' : 'Not every piece is in it. '}Have about ${Math.max(1, Math.round(grams))} g more, ${Math.round(100 * share)} %, for the swatch and the ends: it is not counted in.`,
  'wraps-bands': bandsText,
  'wraps-and-category-differ': ({ category, ...bands }) =>
    `${bandsText(bands)} You gave weight ${category}; the wraps were used. Wrap again, side by side without stretching, to be sure.`,
};
