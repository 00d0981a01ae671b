import { resolveFabric, YARN_WEIGHTS, type Directions, type Fabric, type FabricInput } from '#fabric';
import { DomainError } from '#measure';
import { say } from '../messages.ts';
import type { Pair, YarnNotes } from '../notebook/notebook.ts';
import { metresOf, plainNumber, valueIn } from '../reading/read.ts';
import { memoizeLast } from './memoize-last.ts';

/** An ordinary fabric stands in until something is known of the yarn (mm; assumed: worsted stockinette). */
const ORDINARY = { thicknessMm: 3, thicknessU: 1 };

/** What of a yarn may be out of all reach. */
export type WrongOfYarn = keyof typeof say.yarn.wrong;

export interface ReadFabric {
  readonly input: FabricInput;
  /** Resolved from what was written; null while too little is known, and then `input` is an ordinary fabric. */
  readonly fabric: Fabric | null;
  /** What cannot be right. */
  readonly wrong: WrongOfYarn | null;
  /** True where only the fibre is missing beside the metres. */
  readonly lacksFibre: boolean;
}

export const toFabric = memoizeLast((notes: YarnNotes): ReadFabric => {
  const written = asWritten(notes);
  try {
    return { input: written, fabric: resolveFabric(written), wrong: null, lacksFibre: false };
  } catch (error) {
    if (!(error instanceof DomainError)) throw error;
    const plain = { ...written, stretch: null, ribStretch: null, growth: null, massPerAreaGsm: null };
    const wrong = error.code === 'thickness-unknown' ? null : (error.pointer.split('/')[1] as WrongOfYarn);
    const lacksFibre = wrong === null && written.metresPer100g !== null;
    return { input: { ...(wrong === null ? written : plain), ...ORDINARY }, fabric: null, wrong, lacksFibre };
  }
});

function asWritten(notes: YarnNotes): FabricInput {
  const four = valueIn(notes.fourLayers, 'small');
  return {
    craft: notes.craft,
    stitch: null,
    thicknessMm: four === null ? null : four / 4,
    thicknessU: null,
    wrapsPerInch: plainNumber(notes.wraps),
    metresPer100g: aboveZero(metresOf(notes.metresPer100g)),
    fibre: notes.fibre,
    weightCategory: notes.category ?? categoryOfGauge(notes),
    stretch: both(change(notes.pulledAcross), change(notes.pulledAlong)),
    ribStretch: change(notes.pulledRib),
    growth: both(change(notes.washedAcross), change(notes.washedAlong)),
    massPerAreaGsm: massPerArea(notes),
  };
}

const aboveZero = (value: number | null): number | null => (value === 0 ? null : value);

/** (after − before)/before of two lengths of the swatch; null where either is missing. */
function change({ before, after }: Pair): number | null {
  const [from, to] = [valueIn(before), valueIn(after)];
  return from === null || to === null || from === 0 ? null : to / from - 1;
}

/** Both directions; one that was not measured counts as unchanged where the other was. */
function both(across: number | null, along: number | null): Directions | null {
  return across === null && along === null ? null : { across: across ?? 0, along: along ?? 0 };
}

/** The weight category whose published gauge comes nearest; the maker's own category goes before it. */
export function categoryOfGauge({ craft, stitches }: Pick<YarnNotes, 'craft' | 'stitches'>): number | null {
  const gauge = plainNumber(stitches);
  if (gauge === null) return null;
  const away = ({ from, to }: { readonly from: number | null; readonly to: number | null }): number =>
    Math.max((from ?? 0) - gauge, gauge - (to ?? Infinity), 0);
  const bands = YARN_WEIGHTS.weights
    .filter(({ crochet }) => craft === 'knit' || crochet.stitch === 'single crochet')
    .map((weight) => ({
      category: weight.category,
      away: away(craft === 'knit' ? weight.stockinette : weight.crochet),
    }));
  return bands.reduce((best, band) => (band.away < best.away ? band : best)).category;
}

/** Grams a square metre, from the washed swatch and its weight. */
function massPerArea(notes: YarnNotes): number | null {
  const grams = plainNumber(notes.swatchGrams);
  const [wide, high] = [valueIn(notes.washedAcross.after), valueIn(notes.washedAlong.after)];
  return grams === null || !wide || !high ? null : (grams / (wide * high)) * 1e6;
}
