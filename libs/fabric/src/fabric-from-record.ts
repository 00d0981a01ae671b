import { readMeasured } from '#measure';
import type { FabricRecord } from './fabric-record.ts';
import type { FabricInput } from './fabric.ts';

/** The fabric in mm. @throws DomainError where its thickness cannot be read */
export function fabricFromRecord(record: FabricRecord): FabricInput {
  const thickness = record.thickness == null ? null : readMeasured(record.thickness, 'length');
  return {
    craft: record.craft,
    stitch: record.stitch ?? null,
    thicknessMm: thickness?.size ?? null,
    thicknessU: thickness?.u ?? null,
    wrapsPerInch: record.wrapsPerInch ?? null,
    metresPer100g: record.metresPer100g ?? null,
    fibre: record.fibre ?? null,
    weightCategory: record.weightCategory ?? null,
    stretch: record.stretch ?? null,
    ribStretch: record.ribStretch ?? null,
    growth: record.growth ?? null,
    massPerAreaGsm: record.gramsPerSquareMetre ?? null,
  };
}
