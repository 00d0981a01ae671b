import type { BodyDimension, Figure } from '#body';
import type { How } from '#measure';
import { measuredDocument, type MeasuredDocument } from '../measures/measured-document.ts';
import { HOW_DEFAULT } from '../measures/taken.ts';
import { FIGURE_DEFAULT } from './body-input.ts';
import type { BodyDto } from './body.dto.ts';

/** A body as it is kept: what was entered, with what was left out said plainly. */
export interface BodyDocument {
  readonly title: string;
  readonly figure: Figure;
  readonly age: number | null;
  readonly estimate: boolean;
  readonly measures: readonly BodyMeasureDocument[];
}

export interface BodyMeasureDocument extends MeasuredDocument {
  readonly name: BodyDimension;
  readonly how: How;
  readonly takenAt: string | null;
}

export function bodyDocument(dto: BodyDto): BodyDocument {
  return {
    title: dto.title ?? '',
    figure: dto.figure ?? FIGURE_DEFAULT,
    age: dto.age ?? null,
    estimate: dto.estimate ?? true,
    measures: dto.measures.map((measure) => ({
      name: measure.name,
      how: measure.how ?? HOW_DEFAULT,
      takenAt: measure.takenAt ?? null,
      ...measuredDocument(measure),
    })),
  };
}
