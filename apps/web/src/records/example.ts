import type { components } from '../api.generated.ts';
import { demoRecords, demoRequests } from '../../../../seeds/demo.ts';
import { recordText } from './record-text.ts';
import { fromBodyRecord } from '../reading/body-record.ts';
import { fromDesignRecord } from '../reading/design-record.ts';
import { fromGarmentRecord } from '../reading/garment-record.ts';
import { fromYarnRecord } from '../reading/yarn-record.ts';
import { exampleKey } from '../notebook/example-key.ts';
import { isBlank, collectionOf, type Kind, type Kinds } from '../notebook/kinds.ts';
import type { Notebook } from '../notebook/notebook.ts';
import { newEntry, type Entry, type Collection } from '../notebook/collection.ts';

type Schemas = components['schemas'];

/** The example: a cropped sweater in bulky wool, for a maker with a sweater that fits. */
const SHOWN = 1;

/** Adds the example's entries to a collection; a blank entry is replaced, and an entry that is there already is not added again. */
function exampleCollection<K extends Kind, R>(
  notebook: Notebook,
  kind: K,
  records: readonly R[],
  from: (record: R) => Kinds[K],
): Collection<Kinds[K]> {
  const collection = collectionOf(notebook, kind);
  const written = collection.entries.filter((entry) => entry.stored !== null || !isBlank(kind, entry.notes));
  const example = records.map((record, i): Entry<Kinds[K]> => {
    const notes = from(record);
    const text = recordText(kind, notes);
    return written.find((entry) => recordText(kind, entry.notes) === text) ?? newEntry(exampleKey(kind, i), notes);
  });
  return { ...collection, entries: [...new Set([...written, ...example])], open: example[0]?.key ?? collection.open };
}

export function withExample(notebook: Notebook): Notebook {
  const request = demoRequests[SHOWN] as unknown as Schemas['ComputeSheetDto'];
  return {
    ...notebook,
    bodies: exampleCollection(notebook, 'bodies', demoRecords.bodies as Schemas['BodyDto'][], fromBodyRecord),
    garments: exampleCollection(
      notebook,
      'garments',
      demoRecords.garments as Schemas['GarmentDto'][],
      fromGarmentRecord,
    ),
    yarns: exampleCollection(notebook, 'yarns', demoRecords.fabrics as Schemas['FabricDto'][], fromYarnRecord),
    design: fromDesignRecord(request.design, request.title ?? '', notebook.tape),
  };
}
