import type { BodyProfile } from '#body';
import { garmentQuestions, resolveGarment, type Garment, type GarmentQuestion } from '#garment';

/**
 * What looks like a slip in a garment that fits, held against the chest of its wearer. A chest that was guessed from other
 * measures is none to hold a garment against: then, and where there is none, the garment's measures are held against each other.
 *
 * @throws DomainError as `resolveGarment` does
 */
export function garmentBesideBody(garment: Garment, body: BodyProfile | null): readonly GarmentQuestion[] {
  const chest = body?.values['chest-girth'];
  return garmentQuestions(resolveGarment(garment), chest && chest.how !== 'estimated' ? chest.value : null);
}
