// A sheet in full, with its texts, of a body by the tape, and of the same body with two sweaters that fit as evidence, their posterior
// included. Wanted: at most 1.5 times as long. Run through `npm run bench` (it builds first).
import { loadBodyModel } from '#body';
import { composeSheet } from '#target-sheet';
import { alternate } from './support/alternate.mjs';
import { perSecond } from './support/per-second.mjs';

const model = await loadBodyModel();
const meta = { id: '01890a5d-ac96-774b-bcce-b302099a8057', createdAt: '2026-01-01T12:00:00Z' };
const home = (name, value) => ({ name, value, how: 'home' });
const sweater = (title, wider, fits) => ({
  title,
  construction: 'set-in',
  measures: [
    home('chest-width', 505 + wider),
    home('hem-width', 500 + wider),
    home('shoulder-to-hem', 610),
    home('cross-back-width', 412),
    home('armhole-depth', 205),
    home('sleeve-top-width', 165),
    home('sleeve-length', 560),
    home('cuff-width', 98),
  ],
  thicknessMm: 4,
  thicknessU: 0.3,
  layer: null,
  wornStretched: false,
  fits,
  neckline: 'crew',
  sleeve: 'long',
  wears: { chest: 'right' },
  basis: false,
});
const taped = {
  title: '',
  body: {
    figure: 'woman',
    ageYears: 40,
    estimate: true,
    measures: [home('chest-girth', 940), home('hip-girth', 990), home('stature', 1660), home('upper-arm-girth', 285)],
  },
  garments: [],
  fabric: {
    craft: 'knit',
    stitch: null,
    thicknessMm: 5,
    thicknessU: 0.3,
    wrapsPerInch: null,
    metresPer100g: null,
    fibre: null,
    weightCategory: null,
    stretch: null,
    ribStretch: null,
    growth: null,
    massPerAreaGsm: null,
  },
  design: {
    silhouette: 'pullover',
    construction: 'set-in',
    neckline: 'crew',
    length: null,
    customLengthMm: null,
    basis: null,
    hem: null,
    ease: { category: 'classic', place: 0.5 },
    layer: null,
    opening: null,
    bandMm: null,
    frontBandMm: null,
    overlapMm: null,
    ribMm: null,
    cuffWidthMm: null,
    neckWidthMm: null,
    frontNeckDepthMm: null,
    backNeckDepthMm: null,
    seamAllowanceMm: 0,
  },
  made: [],
  rules: {},
  unit: 'mm',
};
const withSweaters = { ...taped, garments: [sweater('One', 0, 'classic'), sweater('Two', 20, null)] };
let kept = 0;
const making = (input) => () => void (kept += composeSheet(input, meta, { model }).pieces.length);
const [byTape, bySweaters] = [making(taped), making(withSweaters)];

for (let i = 0; i < 2_000; i++) [byTape, bySweaters][i % 2]();
const { ours, bare, ratio } = await alternate(
  9,
  () => perSecond(byTape, 1_000),
  () => perSecond(bySweaters, 1_000),
);
console.log(`evidence: ${Math.round(ours)} sheets/s by the tape, ${Math.round(bare)} with two sweaters`);
console.log(`evidence: ${ratio.toFixed(2)} times as long (wanted: 1.5 at most)`);
if (kept < 0) throw new Error('unreachable');
