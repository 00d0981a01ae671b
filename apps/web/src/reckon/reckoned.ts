import type { BodyDimension, BodyProfile } from '#body';
import type { GarmentDimension } from '#garment';
import type { SheetInput, TargetSheet } from '#target-sheet';
import type { Question } from '../body/Ask.tsx';

/** What the page shows of a notebook. `cannot` says why there is no sheet; null while simply too little is written. */
export interface Reckoned {
  readonly input: SheetInput;
  readonly profile: BodyProfile | null;
  readonly sheet: TargetSheet | null;
  readonly cannot: string | null;
  readonly questions: Readonly<Partial<Record<BodyDimension, Question<BodyDimension>>>>;
  readonly garmentQuestions: Readonly<Partial<Record<GarmentDimension, Question<GarmentDimension>>>>;
}
