import { FABRIC_RECORD, type Directions, type FabricRecord, type StoredFabric } from '#fabric';
import { readMeasured, storedRecord } from '#measure';
import { blankYarn, empty } from '../notebook/blank.ts';
import type { Pair, YarnNotes } from '../notebook/notebook.ts';
import type { Typed } from '../notebook/typed.ts';
import { carrying } from './carrying.ts';
import { categoryOfGauge } from './category-of-gauge.ts';
import { metresOf, plainNumber, valueIn } from './read.ts';

type Field<K extends keyof FabricRecord> = Exclude<FabricRecord[K], undefined>;

/** What she wrote of a yarn and its swatch, as the store takes it. */
export function yarnAsWritten(notes: YarnNotes): FabricRecord {
  const carry = carrying<YarnNotes, StoredFabric>(notes, fromYarnRecord);
  return {
    ...notes.record,
    title: carry(({ name }) => name, ({ title }) => title, () => notes.name.trim().slice(0, FABRIC_RECORD.title.max)),
    craft: notes.craft,
    // The page asks for no stitch: the usual one of another craft goes without saying.
    stitch: carry<Field<'stitch'>>(({ craft }) => craft, ({ stitch }) => stitch, () => null),
    thickness: carry<Field<'thickness'>>(
      ({ fourLayers }) => fourLayers,
      ({ thickness }) => thickness,
      () => oneLayer(notes.fourLayers),
    ),
    wrapsPerInch: carry(({ wraps }) => wraps, ({ wrapsPerInch }) => wrapsPerInch, () => plainNumber(notes.wraps)),
    metresPer100g: carry(
      ({ metresPer100g }) => metresPer100g,
      ({ metresPer100g }) => metresPer100g,
      () => aboveZero(metresOf(notes.metresPer100g)),
    ),
    fibre: notes.fibre,
    weightCategory: carry(
      ({ category, craft, stitches }) => [category, craft, stitches],
      ({ weightCategory }) => weightCategory,
      () => notes.category ?? categoryOfGauge(notes),
    ),
    stretch: carry<Field<'stretch'>>(
      ({ pulledAcross, pulledAlong }) => [pulledAcross, pulledAlong],
      ({ stretch }) => stretch,
      () => both(change(notes.pulledAcross), change(notes.pulledAlong)),
    ),
    ribStretch: carry(({ pulledRib }) => pulledRib, ({ ribStretch }) => ribStretch, () => change(notes.pulledRib)),
    growth: carry<Field<'growth'>>(
      ({ washedAcross, washedAlong }) => [washedAcross, washedAlong],
      ({ growth }) => growth,
      () => both(change(notes.washedAcross), change(notes.washedAlong)),
    ),
    // It is not shown: the page has the swatch's weight and sides in its place.
    gramsPerSquareMetre: carry(
      ({ swatchGrams }) => swatchGrams,
      ({ gramsPerSquareMetre }) => gramsPerSquareMetre,
      () => massPerArea(notes),
    ),
  }; // prettier-ignore
}

function oneLayer(fourLayers: Typed): Field<'thickness'> {
  const four = valueIn(fourLayers, 'small');
  return four === null ? null : { value: four / 4, unit: 'mm' };
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

/** Grams a square metre, from the washed swatch and its weight. */
function massPerArea(notes: YarnNotes): number | null {
  const grams = plainNumber(notes.swatchGrams);
  const [wide, high] = [valueIn(notes.washedAcross.after), valueIn(notes.washedAlong.after)];
  return grams === null || !wide || !high ? null : (grams / (wide * high)) * 1e6;
}

/** Back to what is written. The store keeps a change as a share; here it becomes 100 mm and what they turned into. */
export function fromYarnRecord(given: FabricRecord): YarnNotes {
  const record = storedRecord(FABRIC_RECORD, given);
  const { growth, stretch, thickness } = record;
  return {
    ...blankYarn('cm'),
    name: record.title,
    craft: record.craft,
    stitch: record.stitch,
    fourLayers: thickness === null ? empty('cm') : typed(readMeasured(thickness, 'length').size * 4),
    wraps: plain(record.wrapsPerInch),
    metresPer100g: plain(record.metresPer100g),
    fibre: record.fibre,
    category: record.weightCategory,
    washedAcross: shareAsPair(growth?.across),
    washedAlong: shareAsPair(growth?.along),
    pulledAcross: shareAsPair(stretch?.across),
    pulledAlong: shareAsPair(stretch?.along),
    pulledRib: shareAsPair(record.ribStretch),
    record,
  };
}

const plain = (value: number | null): string => (value === null ? '' : String(value));
const typed = (value: number): Typed => ({ text: String(Number(value.toFixed(4))), tape: 'cm' });

function shareAsPair(share: number | null | undefined): Pair {
  if (share == null) return { before: empty('cm'), after: empty('cm') };
  return { before: typed(10), after: typed(10 * (1 + share)) };
}
