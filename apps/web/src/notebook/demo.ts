import type { components } from '../api.generated.ts';
import { demoRecords, demoRequests } from '../../../../seeds/demo.ts';
import { fromBodyRecord } from '../store/body-record.ts';
import { fromDesignRecord } from '../store/design-record.ts';
import { fromGarmentRecord } from '../store/garment-record.ts';
import { fromYarnRecord } from '../store/yarn-record.ts';
import { KINDS, onShelf, shelfOf } from './kinds.ts';
import { newKey } from './new-key.ts';
import type { Notebook } from './notebook.ts';
import { newEntry, type Entry, type Shelf } from './shelf.ts';

type Schemas = components['schemas'];

/** The example: a cropped sweater in bulky wool, for a maker with a sweater that fits. */
const SHOWN = 1;

function demoShelf<R, T>(records: readonly R[], from: (record: R) => T, open: number): Shelf<T> {
  const entries = records.map((record): Entry<T> => newEntry(newKey(), from(record)));
  return { entries, open: entries[open]?.key ?? '', removed: [] };
}

export function withDemo(notebook: Notebook): Notebook {
  const request = demoRequests[SHOWN] as unknown as Schemas['ComputeSheetDto'];
  return {
    ...notebook,
    bodies: demoShelf(demoRecords.bodies as Schemas['BodyDto'][], fromBodyRecord, 0),
    garments: demoShelf(demoRecords.garments as Schemas['GarmentDto'][], fromGarmentRecord, 0),
    yarns: demoShelf(demoRecords.fabrics as Schemas['FabricDto'][], fromYarnRecord, 0),
    design: fromDesignRecord(request.design, request.title ?? '', notebook.tape),
  };
}

/** The notebook as it was before; what the store has of the example meanwhile is removed from it. */
export function withoutDemo(now: Notebook, before: Notebook): Notebook {
  return KINDS.reduce<Notebook>((it, kind) => {
    const stored = shelfOf(now, kind).entries.flatMap((entry) => (entry.stored === null ? [] : [entry.stored]));
    return onShelf(it, kind, (shelf) => ({ ...shelf, removed: [...shelf.removed, ...stored] }));
  }, before);
}
