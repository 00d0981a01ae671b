import { EXPECTED_THICKNESS, EXPECTED_THICKNESS_SOURCE } from './expected-thickness.ts';
import { fabricError } from './fabric-errors.ts';
import type { FabricNote, FabricSource } from './fabric-messages.ts';
import type { Fabric, FabricInput } from './fabric.ts';
import type { Stitch } from './stitch.ts';
import { thicknessFromDiameter, thicknessFromWraps, YARN_RELATIVE_U } from './stitch-factor.ts';
import { wrapsNote } from './wraps-note.ts';
import { yarnDiameterMm } from './yarn-diameter.ts';
import { YARN_WEIGHTS } from './yarn-weights.ts';

/** The part of a fabric that this file finds, and what there is to say about it. */
type Thickness = Pick<Fabric, 'thicknessMm' | 'thicknessU' | 'from' | 'source' | 'notes'>;

/** Of four layers under a small book, divided by four: the uncertainty of the reading and the pressure, mm (assumed). */
const MEASURED_U_MM = 0.3;

/** Beyond what the yarn's uncertainty of a quarter explains, and short of four layers taken for one (assumed). */
const DOUBTFUL_TIMES = 2.5;

/**
 * How thick the fabric is, from the most trusted thing known: measured; else wraps per inch, or metres per 100 g with the
 * fibre; else the weight category. The input's numbers are within their ranges.
 *
 * @throws DomainError `thickness-unknown` when nothing of it is known
 */
export function thicknessOf(input: FabricInput, stitch: Stitch): Thickness {
  const ofYarn = fromWraps(input, stitch) ?? fromLength(input, stitch) ?? fromCategory(input, stitch);
  const found = measured(input, ofYarn) ?? ofYarn;
  if (found !== null) return found;
  throw fabricError('thickness-unknown', { fibreMissing: input.metresPer100g !== null }, '/thicknessMm');
}

/** A measured thickness stands; where the yarn makes it very unlikely, a note asks. */
function measured({ thicknessMm, thicknessU }: FabricInput, ofYarn: Thickness | null): Thickness | null {
  if (thicknessMm === null) return null;
  return {
    thicknessMm,
    thicknessU: thicknessU ?? MEASURED_U_MM,
    from: 'measured',
    source: { code: 'four-layers', params: {} },
    notes: ofYarn === null ? [] : doubtfulNotes(thicknessMm, ofYarn),
  };
}

function doubtfulNotes(thicknessMm: number, ofYarn: Thickness): readonly FabricNote[] {
  const times = thicknessMm / ofYarn.thicknessMm;
  if (times <= DOUBTFUL_TIMES && times >= 1 / DOUBTFUL_TIMES) return [];
  return [{ code: 'thickness-doubtful', params: { thicknessMm, times, yarn: ofYarn.source } }];
}

function fromWraps({ wrapsPerInch, weightCategory }: FabricInput, stitch: Stitch): Thickness | null {
  if (wrapsPerInch === null) return null;
  const thicknessMm = thicknessFromWraps(wrapsPerInch, stitch);
  const found = fromYarn(thicknessMm, { code: 'wraps', params: { wrapsPerInch, stitch } });
  return { ...found, notes: [...found.notes, wrapsNote(wrapsPerInch, weightCategory)] };
}

function fromLength({ metresPer100g, fibre }: FabricInput, stitch: Stitch): Thickness | null {
  if (metresPer100g === null || fibre === null) return null;
  const thicknessMm = thicknessFromDiameter(yarnDiameterMm(metresPer100g, fibre), stitch);
  return fromYarn(thicknessMm, { code: 'yarn-length', params: { metresPer100g, fibre, stitch } });
}

function fromYarn(thicknessMm: number, source: FabricSource): Thickness {
  const note: FabricNote = {
    code: 'thickness-from-yarn',
    params: { yarn: source },
    source: { code: 'calibrated', params: {} },
  };
  return { thicknessMm, thicknessU: YARN_RELATIVE_U * thicknessMm, from: 'yarn', source, notes: [note] };
}

function fromCategory({ weightCategory }: FabricInput, stitch: Stitch): Thickness | null {
  const range = weightCategory === null ? undefined : EXPECTED_THICKNESS[stitch][weightCategory];
  const weight = weightCategory === null ? undefined : YARN_WEIGHTS.weights[weightCategory];
  if (range === undefined || weight === undefined) return null;
  const { from: fromMm, to: toMm, assumed } = range;
  const source: FabricSource = {
    code: 'weight-category',
    params: { category: weight.category, name: weight.name, stitch },
  };
  const note: FabricNote = {
    code: 'thickness-from-category',
    params: { yarn: source, fromMm, toMm, assumed },
    source: assumed
      ? { code: 'assumed', params: {} }
      : { code: 'publication', params: { title: EXPECTED_THICKNESS_SOURCE } },
  };
  return { thicknessMm: (fromMm + toMm) / 2, thicknessU: (toMm - fromMm) / 2, from: 'category', source, notes: [note] };
}
