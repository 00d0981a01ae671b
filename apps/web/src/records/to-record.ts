import type { BodyRecord } from '#body';
import type { FabricRecord } from '#fabric';
import type { GarmentRecord } from '#garment';
import type { Kinds } from '../notebook/kinds.ts';
import { toGarmentRecord } from '../reading/garment-record.ts';
import { toBody } from '../compute/to-body.ts';
import { toFabric } from '../compute/to-fabric.ts';

/** The record of each kind. */
interface Records {
  readonly bodies: BodyRecord;
  readonly garments: GarmentRecord;
  readonly yarns: FabricRecord;
}

/** What is stored of notes: what could be read and believed, as it was written, and what was left alone as it was stored. */
export const TO_RECORD: { readonly [K in keyof Kinds]: (notes: Kinds[K]) => Records[K] } = {
  bodies: (notes) => toBody(notes).record,
  garments: toGarmentRecord,
  yarns: (notes) => toFabric(notes).record,
};
