import { defaultGarmentU } from './default-garment-u.ts';
import type { GarmentDimension } from './garment-dimension.ts';
import { garmentProblems } from './garment-problems.ts';
import type { Garment, GarmentProfile, GarmentValue } from './garment.ts';

/**
 * A favourite garment ready for the arithmetic of fit: each measure under its name, its uncertainty filled in. Nothing is
 * corrected; a sleeve that does not say where it was measured from was measured from its seam.
 *
 * @throws DomainError the first of `garmentProblems`, pointing to its field
 */
export function resolveGarment(garment: Garment): GarmentProfile {
  const [problem] = garmentProblems(garment);
  if (problem !== undefined) throw problem;
  const { measures, ...kept } = garment;
  const values: Partial<Record<GarmentDimension, GarmentValue>> = {};
  for (const { name, value, how, u, confirmed } of measures)
    values[name] = { value, u: u ?? defaultGarmentU(name, how), how, ...(confirmed && { confirmed }) };
  const sleeve = measures.find(({ name }) => name === 'sleeve-length');
  return { ...kept, values, sleeveFrom: sleeve?.from ?? 'seam' };
}
