import type { BodyDimension, BodyProfile } from '#body';
import type { GarmentDimension } from '#garment';
import type { NextToTake, SheetInput, TargetSheet } from '#target-sheet';
import type { Question } from '../body/Ask.tsx';

/** What the page shows of a notebook. `cannot` says why there is no sheet; null while simply too little is written. */
export interface Reckoned {
  readonly input: SheetInput;
  readonly profile: BodyProfile | null;
  readonly sheet: TargetSheet | null;
  readonly cannot: string | null;
}

/** What is asked of her about a notebook. Nobody waits for it, so it is worked out when a part of the page comes to show it. */
export interface Asking {
  /** The measure that would help most. */
  readonly next: () => NextToTake | null;
  /** What looks like a slip, of her body and of the sweater that fits. */
  readonly ofBody: () => Readonly<Partial<Record<BodyDimension, Question<BodyDimension>>>>;
  readonly ofGarment: () => Readonly<Partial<Record<GarmentDimension, Question<GarmentDimension>>>>;
}
