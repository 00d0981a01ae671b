import fc, { type Arbitrary } from 'fast-check';
import {
  AGES,
  BODY_RECORD,
  bodyFromRecord,
  bodyProblems,
  humanLimits,
  type BodyDimension,
  type BodyRecord,
  publishedSizes,
} from '#body';
import { FABRIC_RECORD, fabricFromRecord, resolveFabric, type FabricRecord } from '#fabric';
import { DESIGN_RECORD, type DesignRecord } from '#fit';
import { GARMENT_RECORD, garmentFromRecord, garmentProblems, type GarmentRecord } from '#garment';
import { anyRecord } from './any-record.ts';

/** Bodies that the API takes: of people that can be. */
export const anyBody: Arbitrary<BodyRecord> = fc
  .constantFrom(...BODY_RECORD.figure.of)
  .chain((figure) =>
    anyRecord(BODY_RECORD, ({ name }) => humanLimits(figure, name as BodyDimension)).map((body) => ({
      ...body,
      figure,
    })),
  )
  .map((body) => (isAgeOf(body) ? body : { ...body, age: null }))
  .chain((body) => sizeOf(body).map((size) => ({ ...body, size })))
  .filter((body) => bodyProblems(bodyFromRecord(body)).length === 0);

/** A published size that the body may have, or none. */
function sizeOf({ figure }: BodyRecord): Arbitrary<Exclude<BodyRecord['size'], undefined>> {
  const sizes = publishedSizes()
    .filter((table) => table.figure === figure && table.measures.some(({ name }) => name === 'chest-girth'))
    .flatMap(({ id, rows }) => rows.map(({ size }) => ({ table: id, size })));
  return sizes.length === 0 ? fc.constant(null) : fc.option(fc.constantFrom(...sizes));
}

function isAgeOf({ figure, age }: BodyRecord): boolean {
  const [youngest, oldest] = AGES[figure ?? 'unsaid'];
  return age == null || (age >= youngest && age <= oldest);
}

/** Garments that the API takes: of sizes that can be worn. A place to measure from is of the sleeve alone. */
export const anyGarment: Arbitrary<GarmentRecord> = anyRecord(GARMENT_RECORD, ({ name }) =>
  name === undefined ? null : [70, 290],
)
  .map((garment) => ({
    ...garment,
    measures: garment.measures.map((measure) =>
      measure.name === 'sleeve-length' ? measure : { ...measure, from: null },
    ),
  }))
  .filter((garment) => garmentProblems(garmentFromRecord(garment)).length === 0);

/** Fabrics that the API takes: of a thickness that is known somehow. */
export const anyFabric: Arbitrary<FabricRecord> = anyRecord(FABRIC_RECORD).filter((fabric) => {
  try {
    return resolveFabric(fabricFromRecord(fabric)) !== null;
  } catch {
    return false;
  }
});

/** Designs that the API takes: a custom length is given. */
export const anyDesign: Arbitrary<DesignRecord> = anyRecord(DESIGN_RECORD).filter(
  ({ length, customLength }) => length !== 'custom' || customLength != null,
);
