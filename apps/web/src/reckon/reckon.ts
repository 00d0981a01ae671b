import { resolveBody, type BodyProfile, type Estimator } from '#body';
import { DomainError } from '#measure';
import { composeSheet, type SheetInput, type TargetSheet } from '#target-sheet';

/** What the page shows of a notebook. `cannot` says why there is no sheet; null while simply too little is written. */
export interface Reckoned {
  readonly profile: BodyProfile | null;
  readonly sheet: TargetSheet | null;
  readonly cannot: string | null;
}

/** The preview is the computation; only a sheet that is kept has an id and a time. */
const PREVIEW = { id: '', createdAt: '' };

/** What a maker with an empty page has not written yet; nothing to complain about. */
const TOO_LITTLE = ['body-missing', 'garment-chest-width-missing'];

export function reckonProfile(body: SheetInput['body'], estimator?: Estimator): BodyProfile | null {
  return body && resolveBody(body, { estimate: body.estimate, ...(estimator && { estimator }) });
}

export function reckonSheet(input: SheetInput, estimator?: Estimator): Pick<Reckoned, 'sheet' | 'cannot'> {
  try {
    return { sheet: composeSheet(input, PREVIEW, { estimator }), cannot: null };
  } catch (error) {
    if (!(error instanceof DomainError)) throw error;
    return { sheet: null, cannot: TOO_LITTLE.includes(error.code) ? null : error.message };
  }
}
