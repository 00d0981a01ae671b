import { resolveFabric } from '#fabric';
import { decideDesign, favouritesOf, rulesWith, type Favourites, type FitRequest, type ResolvedWearer } from '#fit';
import { atPointer } from './at-pointer.ts';
import type { SheetInput } from './sheet-input.ts';

/** What an input asks the advice for, with everything decided that depends on what is known of the wearer. */
interface DecidedRequest {
  readonly request: FitRequest;
  /** What the ease is that of, where that was wished. */
  readonly favourites: Favourites | null;
}

/** @throws DomainError of the fabric, the rules or the design, with a JSON Pointer into the input */
export function decidedRequest(input: SheetInput, wearer: ResolvedWearer): DecidedRequest {
  const fabric = atPointer('/fabric', () => resolveFabric(input.fabric));
  const rules = atPointer('/rules', () => rulesWith(input.rules));
  const garment = wearer.garments[basisOf(input.garments)] ?? null;
  const favourites = favouritesOf(wearer, rules);
  const design = atPointer('/design', () => decideDesign(input.design, { garment, favourites }));
  const { ease } = input.design;
  const likes = ease !== null && 'as' in ease && ease.as === 'favourites';
  return {
    request: { body: wearer.body, garment, fabric, design, made: input.made, rules },
    favourites: likes ? favourites : null,
  };
}

/** The garment that a design is based on: the one that was said to be, else the first with a chest width, else the first. */
function basisOf(garments: SheetInput['garments']): number {
  const said = garments.findIndex(({ basis }) => basis);
  if (said !== -1) return said;
  return Math.max(
    garments.findIndex(({ measures }) => measures.some(({ name }) => name === 'chest-width')),
    0,
  );
}
