import type { Directions } from '#fabric';
import type { components } from '../api.generated.ts';
import { blankYarn, empty } from '../notebook/blank.ts';
import type { Pair, YarnNotes } from '../notebook/notebook.ts';
import type { Typed } from '../notebook/typed.ts';
import { toFabric } from '../compute/to-fabric.ts';

type FabricDto = components['schemas']['FabricDto'];

/** What an unknown yarn is stored with: nothing but its name and craft. */
export function toYarnRecord(notes: YarnNotes): FabricDto {
  const { input, fabric } = toFabric(notes);
  const title = notes.name.trim().slice(0, 120);
  if (fabric === null) return { title, craft: notes.craft };
  return {
    title,
    craft: notes.craft,
    stitch: input.stitch,
    thickness: input.thicknessMm === null ? null : { value: input.thicknessMm, unit: 'mm' },
    wrapsPerInch: input.wrapsPerInch,
    metresPer100g: input.metresPer100g,
    fibre: input.fibre,
    weightCategory: input.weightCategory,
    stretch: input.stretch,
    ribStretch: input.ribStretch,
    growth: input.growth,
    gramsPerSquareMetre: input.massPerAreaGsm,
  };
}

/** Back to what is written. The store keeps a change as a share; here it becomes 100 mm and what they turned into. */
export function fromYarnRecord(record: FabricDto): YarnNotes {
  const { growth = null, stretch = null, thickness } = record;
  const layerMm = thickness?.value ?? null;
  return {
    ...blankYarn('cm'),
    name: record.title ?? '',
    craft: record.craft,
    stitch: record.stitch ?? null,
    fourLayers: layerMm === null ? empty('cm') : typed(layerMm * 4),
    wraps: plain(record.wrapsPerInch),
    metresPer100g: plain(record.metresPer100g),
    fibre: record.fibre ?? null,
    category: record.weightCategory ?? null,
    washedAcross: pairOf(growth, 'across'),
    washedAlong: pairOf(growth, 'along'),
    pulledAcross: pairOf(stretch, 'across'),
    pulledAlong: pairOf(stretch, 'along'),
    pulledRib: shareAsPair(record.ribStretch),
  };
}

const plain = (value: number | null | undefined): string => (value == null ? '' : String(value));
const typed = (value: number): Typed => ({ text: String(Number(value.toFixed(4))), tape: 'cm' });
const pairOf = (both: Directions | null, axis: keyof Directions): Pair => shareAsPair(both?.[axis]);

function shareAsPair(share: number | null | undefined): Pair {
  if (share == null) return { before: empty('cm'), after: empty('cm') };
  return { before: typed(10), after: typed(10 * (1 + share)) };
}
