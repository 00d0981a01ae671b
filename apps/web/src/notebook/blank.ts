import { newCollection } from './collection.ts';
import type { BodyNotes, DesignNotes, GarmentNotes, Notebook, Pair, YarnNotes } from './notebook.ts';
import type { Tape, Typed } from './typed.ts';

export const empty = (tape: Tape): Typed => ({ text: '', tape });
const emptyPair = (tape: Tape): Pair => ({ before: empty(tape), after: empty(tape) });

export const blankBody = (name = ''): BodyNotes => ({
  name,
  figure: 'woman',
  age: '',
  takenBy: 'home',
  skipped: 'guessed',
  measures: {},
});

export const blankGarment = (tape: Tape): GarmentNotes => ({
  name: '',
  construction: 'drop-shoulder',
  measures: {},
  sleeveFrom: 'seam',
  thickness: empty(tape),
  layer: null,
  wornStretched: false,
  fits: null,
  neckline: null,
  sleeve: 'long',
  wears: {},
  wearer: null,
  confirmed: {},
});

export const blankYarn = (tape: Tape): YarnNotes => ({
  name: '',
  craft: 'knit',
  stitch: null,
  fourLayers: empty(tape),
  wraps: '',
  metresPer100g: '',
  fibre: null,
  category: null,
  stitches: '',
  washedAcross: emptyPair(tape),
  washedAlong: emptyPair(tape),
  pulledAcross: emptyPair(tape),
  pulledAlong: emptyPair(tape),
  pulledRib: emptyPair(tape),
  swatchGrams: '',
});

export const blankDesign = (tape: Tape): DesignNotes => ({
  title: '',
  silhouette: 'pullover',
  construction: 'drop-shoulder',
  neckline: 'crew',
  length: null,
  hem: null,
  basis: null,
  ease: null,
  place: 0.5,
  ownEase: empty(tape),
  change: empty(tape),
  layer: null,
  opening: { at: null, length: empty(tape) },
  lengths: {},
  rules: {},
});

export const blankNotebook = (tape: Tape): Notebook => ({
  tape,
  bodies: newCollection('body-1', blankBody()),
  garments: newCollection('garment-1', blankGarment(tape)),
  yarns: newCollection('yarn-1', blankYarn(tape)),
  design: blankDesign(tape),
  made: {},
});
