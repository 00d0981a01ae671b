import type { components } from '../api.generated.ts';
import { demoRecords, demoRequests } from '../../../../seeds/demo.ts';
import { asStored } from '../store/as-stored.ts';
import { fromBodyRecord } from '../store/body-record.ts';
import { fromDesignRecord } from '../store/design-record.ts';
import { fromGarmentRecord } from '../store/garment-record.ts';
import { fromYarnRecord } from '../store/yarn-record.ts';
import { demoKey } from './demo-key.ts';
import { isBlank, shelfOf, type Kind, type Kinds } from './kinds.ts';
import type { Notebook } from './notebook.ts';
import { newEntry, type Entry, type Shelf } from './shelf.ts';

type Schemas = components['schemas'];

/** The example: a cropped sweater in bulky wool, for a maker with a sweater that fits. */
const SHOWN = 1;

/** The example's entries beside what is written; a blank one gives way, and one that is there already is not added again. */
function demoShelf<K extends Kind, R>(
  notebook: Notebook,
  kind: K,
  records: readonly R[],
  from: (record: R) => Kinds[K],
): Shelf<Kinds[K]> {
  const shelf = shelfOf(notebook, kind);
  const written = shelf.entries.filter((entry) => entry.stored !== null || !isBlank(kind, entry.notes));
  const example = records.map((record, i): Entry<Kinds[K]> => {
    const notes = from(record);
    const text = asStored(kind, notes);
    return written.find((entry) => asStored(kind, entry.notes) === text) ?? newEntry(demoKey(kind, i), notes);
  });
  return { ...shelf, entries: [...new Set([...written, ...example])], open: example[0]?.key ?? shelf.open };
}

export function withDemo(notebook: Notebook): Notebook {
  const request = demoRequests[SHOWN] as unknown as Schemas['ComputeSheetDto'];
  return {
    ...notebook,
    bodies: demoShelf(notebook, 'bodies', demoRecords.bodies as Schemas['BodyDto'][], fromBodyRecord),
    garments: demoShelf(notebook, 'garments', demoRecords.garments as Schemas['GarmentDto'][], fromGarmentRecord),
    yarns: demoShelf(notebook, 'yarns', demoRecords.fabrics as Schemas['FabricDto'][], fromYarnRecord),
    design: fromDesignRecord(request.design, request.title ?? '', notebook.tape),
  };
}
