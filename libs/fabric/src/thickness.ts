import type { Note } from '#measure';
import { EXPECTED_THICKNESS, EXPECTED_THICKNESS_SOURCE } from './expected-thickness.ts';
import { fabricError } from './fabric-errors.ts';
import type { Fabric, FabricInput, Stitch } from './fabric.ts';
import { thicknessFromDiameter, thicknessFromWraps, YARN_RELATIVE_U } from './stitch-factor.ts';
import { yarnDiameterMm } from './yarn-diameter.ts';
import { wrapsNote } from './wraps-note.ts';
import { YARN_WEIGHTS } from './yarn-weights.ts';

/** The part of a fabric that this file finds, and what there is to say about it. */
export type Thickness = Pick<Fabric, 'thicknessMm' | 'thicknessU' | 'from' | 'fromText' | 'notes'>;

/** Of four layers under a small book, divided by four: what the reading and the pressure leave in doubt, mm (assumed). */
const MEASURED_U_MM = 0.3;

/** Beyond what a quarter's doubt of the yarn explains, and short of four layers taken for one (assumed). */
const DOUBTFUL_TIMES = 2.5;

const HOW_TO_MEASURE = 'Lay four layers of the swatch under a small book, measure their height and divide by four.';
const STITCH_IN_WORDS: Readonly<Record<Stitch, string>> = {
  stockinette: 'stockinette',
  'single-crochet': 'single crochet',
};

/**
 * How thick the fabric is, from the most trusted thing known: measured; else wraps per inch, or metres per 100 g with the
 * fibre; else the weight category. The input's numbers are within their ranges.
 *
 * @throws DomainError `thickness-unknown` when nothing of it is known
 */
export function thicknessOf(input: FabricInput, stitch: Stitch): Thickness {
  const reckoned = fromWraps(input, stitch) ?? fromLength(input, stitch) ?? fromCategory(input, stitch);
  const found = measured(input, reckoned) ?? reckoned;
  if (found !== null) return found;
  throw fabricError('thickness-unknown', { fibreMissing: input.metresPer100g !== null }, '/thicknessMm');
}

/** A measured thickness stands; where the yarn makes it very unlikely, a note asks. */
function measured({ thicknessMm, thicknessU }: FabricInput, reckoned: Thickness | null): Thickness | null {
  if (thicknessMm === null) return null;
  return {
    thicknessMm,
    thicknessU: thicknessU ?? MEASURED_U_MM,
    from: 'measured',
    fromText: 'measured, four layers divided by four',
    notes: reckoned === null ? [] : doubts(thicknessMm, reckoned),
  };
}

function doubts(thicknessMm: number, reckoned: Thickness): readonly Note[] {
  const times = thicknessMm / reckoned.thicknessMm;
  if (times <= DOUBTFUL_TIMES && times >= 1 / DOUBTFUL_TIMES) return [];
  const slip =
    times > 1 ? 'If it is of four layers, divide it by four.' : 'If it was divided by four already, give it as it was.';
  const text = `The thickness, ${thicknessMm} mm, is ${times.toFixed(1)} times what the yarn (${reckoned.fromText}) gives. It is used as measured. ${slip}`;
  return [{ code: 'thickness-doubtful', text }];
}

function fromWraps({ wrapsPerInch, weightCategory }: FabricInput, stitch: Stitch): Thickness | null {
  if (wrapsPerInch === null) return null;
  const thicknessMm = thicknessFromWraps(wrapsPerInch, stitch);
  const found = fromYarn(thicknessMm, `${wrapsPerInch} wraps per inch, ${STITCH_IN_WORDS[stitch]}`);
  return { ...found, notes: [...found.notes, wrapsNote(wrapsPerInch, weightCategory)] };
}

function fromLength({ metresPer100g, fibre }: FabricInput, stitch: Stitch): Thickness | null {
  if (metresPer100g === null || fibre === null) return null;
  const thicknessMm = thicknessFromDiameter(yarnDiameterMm(metresPer100g, fibre), stitch);
  return fromYarn(thicknessMm, `${metresPer100g} m per 100 g of ${fibre}, ${STITCH_IN_WORDS[stitch]}`);
}

function fromYarn(thicknessMm: number, fromText: string): Thickness {
  const text = `The fabric’s thickness is reckoned from the yarn (${fromText}) and may be a quarter off. ${HOW_TO_MEASURE}`;
  const note = { code: 'thickness-from-yarn', text, source: 'calibrated on the expected thicknesses, from memory' };
  return { thicknessMm, thicknessU: YARN_RELATIVE_U * thicknessMm, from: 'yarn', fromText, notes: [note] };
}

function fromCategory({ weightCategory }: FabricInput, stitch: Stitch): Thickness | null {
  const range = weightCategory === null ? undefined : EXPECTED_THICKNESS[stitch][weightCategory];
  const weight = weightCategory === null ? undefined : YARN_WEIGHTS.weights[weightCategory];
  if (range === undefined || weight === undefined) return null;
  const fromText = `weight ${weight.category} (${weight.name}), ${STITCH_IN_WORDS[stitch]}`;
  const guess = range.assumed ? 'no table has this weight, so it is assumed' : 'the middle of what is usual for it';
  return {
    thicknessMm: (range.from + range.to) / 2,
    thicknessU: (range.to - range.from) / 2,
    from: 'category',
    fromText,
    notes: [
      {
        code: 'thickness-from-category',
        text: `The fabric’s thickness is taken from the yarn’s ${fromText}: ${guess}, ${range.from} to ${range.to} mm. ${HOW_TO_MEASURE} Wraps per inch are better than a category, too.`,
        source: range.assumed ? 'assumed' : EXPECTED_THICKNESS_SOURCE,
      },
    ],
  };
}
