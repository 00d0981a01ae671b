// Sheets a second on one core: their numbers alone (every value with its uncertainty, low and high), and told in full; the ratio of
// the full ones to copying and serialising the same sheet from constants; and memory over many. Wanted: 20,000 sheets/s of numbers.
// Run through `npm run bench` (it builds first). Figures are for comparing within one run, not a test.
import { advise, rulesWith } from '#fit';
import { resolveBody } from '#body';
import { resolveFabric } from '#fabric';
import { compute } from '../dist/libs/fit/src/evaluation/compute.js';
import { sheetNumbers } from '../dist/libs/fit/src/evaluation/sheet-numbers.js';
import { withText } from '#target-sheet';
import { median } from './support/alternate.mjs';
import { perSecond } from './support/per-second.mjs';

const home = (name, value) => ({ name, value, how: 'home' });
const body = resolveBody(
  {
    figure: 'woman',
    ageYears: null,
    measures: [
      home('chest-girth', 940),
      home('hip-girth', 990),
      home('back-waist-length', 437),
      home('across-back', 404),
      home('nape-to-cuff', 743),
      home('upper-arm-girth', 280),
      home('wrist-girth', 160),
      home('scye-depth', 184),
      home('neck-base-girth', 371),
      home('head-girth', 561),
      home('hand-girth', 190),
      home('scye-girth', 400),
    ],
  },
  { estimate: false },
);
const nothing = {
  stitch: null,
  thicknessU: null,
  wrapsPerInch: null,
  metresPer100g: null,
  fibre: null,
  weightCategory: null,
  stretch: null,
  ribStretch: null,
  growth: null,
  massPerAreaGsm: null,
};
const requests = ['drop-shoulder', 'squared-drop', 'set-in', 'raglan'].flatMap((construction) =>
  [3, 6].map((thicknessMm) => ({
    body,
    garment: null,
    fabric: resolveFabric({ craft: 'knit', thicknessMm, ...nothing }),
    design: {
      silhouette: 'pullover',
      construction,
      neckline: 'crew',
      length: 'regular',
      customLengthMm: null,
      basis: 'body',
      hem: 'straight',
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
    rules: rulesWith({}),
  })),
);

const ready = requests.map((request) => advise(request));
let kept = 0;
const computing = (i) => {
  kept += advise(requests[i % requests.length]).pieces.length;
};
const numbers = (i) => {
  const computed = compute(requests[i % requests.length]);
  const all = sheetNumbers(computed);
  for (const planned of computed.model.numbers) if (all.of(planned)) kept++;
};
const inWords = (i) => {
  const request = requests[i % requests.length];
  kept += withText(advise(request), { tape: 'cm' }).pieces.length;
};
const constant = (i) => {
  kept += JSON.stringify(structuredClone(ready[i % ready.length])).length;
};

for (let i = 0; i < 20_000; i++) numbers(i);
for (let i = 0; i < 5_000; i++) computing(i);
for (let i = 0; i < 2_000; i++) inWords(i);
for (let i = 0; i < 500; i++) constant(i);
const rounds = Array.from({ length: 7 }, () => ({
  numbers: perSecond(numbers, 20_000),
  computed: perSecond(computing, 8_000),
  inWords: perSecond(inWords, 4_000),
  constant: perSecond(constant, 1_000),
}));
const figures = median(rounds.map((round) => round.numbers));
const computed = median(rounds.map((round) => round.computed));
const withTexts = median(rounds.map((round) => round.inWords));
const fromConstants = median(rounds.map((round) => round.constant));
console.log(`fit: ${Math.round(figures)} sheets/s, every number with its uncertainty, low and high (wanted: 25000)`);
console.log(
  `fit: ${Math.round(computed)} sheets/s told in full, ${Math.round(fromConstants)} sheets/s copied and serialised from constants`,
);
console.log(`fit: ${Math.round(withTexts)} sheets/s in full with the text of every message`);
console.log(`fit: ratio ${(computed / fromConstants).toFixed(2)} (told in full to constants)`);

const million = Number(process.env.BENCH_SHEETS ?? 1_000_000);
const used = [];
for (let round = 0; round < 10; round++) {
  for (let i = 0; i < million / 10; i++) computing(i);
  globalThis.gc?.();
  used.push(process.memoryUsage().heapUsed / 2 ** 20);
}
console.log(`fit: heap after each tenth of ${million} sheets, MB: ${used.map((mb) => mb.toFixed(1)).join(' ')}`);
if (kept < 0) throw new Error('unreachable');
