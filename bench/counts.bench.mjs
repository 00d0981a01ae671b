// Milliseconds to count a sheet in stitches and rows, by construction and gauge (stitches in 10 cm). Wanted: 2 ms at most.
// Run through `npm run bench` (it builds first). Figures are for comparing within one run, not a test.
import { resolveBody } from '#body';
import { countsOf } from '#counts';
import { resolveFabric } from '#fabric';
import { advise, rulesWith } from '#fit';

const GAUGES = [
  [28, 38],
  [22, 30],
  [16, 22],
  [11, 15],
  [7, 9],
];
const RUNS = 200;

const measures = Object.entries({
  'chest-girth': 940,
  'hip-girth': 990,
  'back-waist-length': 437,
  'across-back': 404,
  'nape-to-cuff': 743,
  'upper-arm-girth': 280,
  'wrist-girth': 160,
  'scye-depth': 184,
  'neck-base-girth': 371,
  'head-girth': 561,
  'hand-girth': 190,
}).map(([name, value]) => ({ name, value, how: 'home' }));
const body = resolveBody({ figure: 'woman', ageYears: null, measures }, { estimate: false });
const fabric = resolveFabric({
  craft: 'knit',
  stitch: null,
  thicknessMm: 4,
  thicknessU: null,
  wrapsPerInch: null,
  metresPer100g: null,
  fibre: null,
  weightCategory: null,
  stretch: null,
  ribStretch: null,
  growth: null,
  massPerAreaGsm: null,
});

function sheetOf(silhouette, construction) {
  const chosen = { silhouette, construction, neckline: 'crew', length: 'regular', basis: 'body', hem: 'straight' };
  const left = ['customLengthMm', 'layer', 'opening', 'bandMm', 'frontBandMm', 'overlapMm', 'ribMm', 'cuffWidthMm'];
  const neck = ['neckWidthMm', 'frontNeckDepthMm', 'backNeckDepthMm'];
  const none = Object.fromEntries([...left, ...neck].map((name) => [name, null]));
  const design = { ...none, ...chosen, ease: { category: 'classic', place: 0.5 }, seamAllowanceMm: 0 };
  return advise({ body, garment: null, fabric, made: [], rules: rulesWith({}), design });
}

for (const silhouette of ['pullover', 'cardigan'])
  for (const construction of ['drop-shoulder', 'squared-drop', 'set-in', 'raglan']) {
    const sheet = sheetOf(silhouette, construction);
    const figures = GAUGES.map(([stitches, rows]) => {
      const gauge = { main: { stitches, rows, over: 100 }, rib: null };
      const request = { gauge, multiple: { main: null, rib: null }, parity: null, evenRows: false };
      for (let run = 0; run < RUNS; run += 1) countsOf(sheet, request, 100);
      const start = performance.now();
      for (let run = 0; run < RUNS; run += 1) countsOf(sheet, request, 100);
      return `${stitches}: ${((performance.now() - start) / RUNS).toFixed(2)} ms`;
    });
    console.log(`${silhouette}, ${construction}: ${figures.join(', ')}`);
  }
