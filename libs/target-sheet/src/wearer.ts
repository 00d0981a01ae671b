import type { BodyDimension, BodyModel } from '#body';
import { BODY_MEASURES, resolveWearer, rulesWith, type ResolvedWearer } from '#fit';
import { resolveGarment } from '#garment';
import { atPointer } from './at-pointer.ts';
import type { SheetInput } from './sheet-input.ts';

/**
 * The wearer of an input, by her body and the garments that fit her. Without a model an adult's other measures come from the published tables.
 * `wanted`: the dimensions that are asked for; default: what a sheet needs.
 * @throws DomainError of the body, a garment or the rules, with a JSON Pointer into the input
 */
export function wearerOf(
  { body, garments, rules }: Pick<SheetInput, 'body' | 'garments' | 'rules'>,
  model: BodyModel | null,
  wanted: readonly BodyDimension[] = BODY_MEASURES,
): ResolvedWearer {
  const profiles = garments.map((garment, place) => atPointer(`/garments/${place}`, () => resolveGarment(garment)));
  const sized = atPointer('/rules', () => rulesWith(rules));
  return atPointer('/body', () => resolveWearer(body, profiles, sized, model, wanted));
}
