import { Inject, Injectable } from '@nestjs/common';
import {
  BODY_DIMENSIONS,
  defaultU,
  resolveBody,
  TAKING,
  WHOM_IT_WAS_MADE_FROM,
  type Body,
  type BodyDimension,
  type BodyModel,
  type BodyProfile,
  type Question,
} from '#body';
import type { GarmentQuestion } from '#garment';
import { normalQuantile } from '#measure';
import { garmentBesideBody, nextToTake } from '#target-sheet';
import { BODY_MODEL } from '../body-model/body-model.module.ts';
import { sheetInput } from '../target-sheets/sheet-input.ts';
import type { SheetRequest } from '../target-sheets/sheet-request.ts';
import type { BodyProfileDto, GarmentQuestionDto, ProfileDimensionDto } from './profile.dto.ts';

/** Half the width of a 90 % interval, in standard uncertainties. */
const HALF_WIDTH_90 = normalQuantile(0.95);

/** What is known of a body: measured, estimated and missing side by side, with questions and the measure to take next. */
@Injectable()
export class BodyProfiles {
  constructor(@Inject(BODY_MODEL) private readonly model: BodyModel) {}

  of(request: SheetRequest & { readonly body: object }): BodyProfileDto {
    const input = sheetInput(request);
    const { body, garment } = input;
    if (body === null) throw new Error('A profile is of a body.');
    const profile = resolveBody(body, { estimate: body.estimate, estimator: this.model });
    const estimated = Object.values(profile.values).some(({ how }) => how === 'estimated');
    return {
      dimensions: BODY_DIMENSIONS.map((name) => dimensionOf(name, body, profile)),
      questions: this.questionsOf(body).map((question) => ({ ...question, wouldBe: repairsOf(question) })),
      garmentQuestions: garment === null ? [] : garmentBesideBody(garment, profile).map(garmentQuestionOf),
      next: nextToTake(input, profile),
      notes: [...profile.notes, ...(estimated ? [WHOM_IT_WAS_MADE_FROM] : [])],
    };
  }

  private questionsOf({ figure, ageYears, measures }: Body): readonly Question[] {
    const known = measures.map(({ name, value, how, u }) => ({ name, value, u: u ?? defaultU(name, how).u }));
    return this.model.questionsOf({ figure, ageYears, known });
  }
}

const garmentQuestionOf = ({ name, slip, text, wouldBe }: GarmentQuestion): GarmentQuestionDto => ({
  name,
  code: slip,
  text,
  wouldBe,
});

function dimensionOf(name: BodyDimension, body: Body, profile: BodyProfile): ProfileDimensionDto {
  const fixed = { name, unit: name === 'weight' ? ('g' as const) : ('mm' as const), taking: TAKING[name].how };
  const known = profile.values[name];
  if (known === undefined) {
    const nothing = { value: null, u: null, low: null, high: null, how: null };
    return { ...fixed, ...nothing, state: 'missing', from: profile.missing[name] ?? '' };
  }
  const { value, u, how, from } = known;
  const state = body.measures.some((measure) => measure.name === name) ? 'measured' : 'estimated';
  return { ...fixed, state, value, u, low: value - HALF_WIDTH_90 * u, high: value + HALF_WIDTH_90 * u, how, from };
}

function repairsOf({ name, wouldBe }: Question): { name: BodyDimension; value: number }[] {
  if (wouldBe === null) return [];
  return typeof wouldBe === 'number' ? [{ name, value: wouldBe }] : [...wouldBe];
}
