import { BODY_DIMENSIONS, defaultU, nextMeasure, type BodyDimension, type BodyProfile } from '#body';
import { advise, sensitivities, type Advice, type DimensionName, type FitRequest, type ResolvedWearer } from '#fit';
import { DomainError, isMeasured } from '#measure';
import { decidedRequest } from './fit-request.ts';
import type { SheetInput } from './sheet-input.ts';

/** The measure to take next. `before` and `after`: uncertainty of the sheet's main measures taken together, mm; null where there is no number without it. */
export interface NextToTake {
  readonly name: BodyDimension;
  readonly before: number | null;
  readonly after: number | null;
}

/** The measures that decide how a sweater fits. */
const TARGETS: readonly DimensionName[] = [
  'chest-width',
  'hem-width',
  'centre-back-length',
  'armhole-depth',
  'neck-width',
  'sleeve-top-width',
  'sleeve-length',
  'cuff-width',
];

/**
 * The one measure of the body that would help most: the chest while it was not measured, then one without which the sheet has gaps, else the one
 * that makes it surest. Null where none is worth the tape, and where a garment decides.
 *
 * @param wearer of `input`, resolved
 */
export function nextToTake(input: SheetInput, wearer: ResolvedWearer): NextToTake | null {
  if (input.design.basis === 'garment') return null;
  const profile = wearer.body;
  if (!wasTaken(profile, 'chest-girth')) return gap('chest-girth');
  const worked = workedOut(input, wearer);
  if (worked === null) return null;
  const { request, advice } = worked;
  const lacking = mostNeeded(advice);
  if (lacking !== undefined) return gap(lacking);
  const covariance = profile.covariance;
  if (covariance === null) return null;
  const guessed = covariance.names.filter((name) => !wasTaken(profile, name));
  const tapeU = Object.fromEntries(guessed.map((name) => [name, defaultU(name, 'home').u]));
  return nextMeasure({ covariance, sensitivities: sensitivities(request, TARGETS), tapeU });
}

const gap = (name: BodyDimension): NextToTake => ({ name, before: null, after: null });

function wasTaken({ values }: BodyProfile, name: BodyDimension): boolean {
  const known = values[name];
  return known !== undefined && isMeasured(known.how);
}

/** The request with its advice; null where none can be given yet. */
function workedOut(
  input: SheetInput,
  wearer: ResolvedWearer,
): { readonly request: FitRequest; readonly advice: Advice } | null {
  try {
    const { request } = decidedRequest(input, wearer);
    return { request, advice: advise(request) };
  } catch (error) {
    if (error instanceof DomainError) return null;
    throw error;
  }
}

/** The dimension that the most of what has no value waits for; of equals, the one that comes first in the list of all. */
function mostNeeded({ assembled, pieces }: Advice): BodyDimension | undefined {
  const dimensions = [...assembled, ...pieces.flatMap((piece) => piece.dimensions)];
  const needs = dimensions.flatMap(({ noAdvice }) => noAdvice?.needs ?? []);
  const waiting = (name: BodyDimension): number => needs.filter((need) => need === name).length;
  return BODY_DIMENSIONS.filter((name) => needs.includes(name)).sort((a, b) => waiting(b) - waiting(a))[0];
}
