import { Inject, Injectable } from '@nestjs/common';
import { howToMeasure, noteWithText, text } from '#advice-text';
import {
  BODY_DIMENSIONS,
  BODY_MODEL_MADE_FROM,
  defaultU,
  type Body,
  type BodyDimension,
  type BodyModel,
  type BodyProfile,
  type Question,
} from '#body';
import type { GarmentQuestion } from '#garment';
import { normalQuantile } from '#measure';
import { garmentBesideBody, nextToTake, wearerOf } from '#target-sheet';
import { BODY_MODEL } from '../body-model/body-model.module.ts';
import { sheetInput } from '../target-sheets/sheet-input.ts';
import type { SheetRequest } from '../target-sheets/sheet-request.ts';
import type { BodyProfileDto, GarmentQuestionDto, ProfileDimensionDto, QuestionDto } from './profile.dto.ts';

/** Half the width of a 90 % interval, in standard uncertainties. */
const HALF_WIDTH_90 = normalQuantile(0.95);

/** What is known of a body: measured, estimated and missing side by side, with questions and the measure to take next. */
@Injectable()
export class BodyProfiles {
  constructor(@Inject(BODY_MODEL) private readonly model: BodyModel) {}

  of(request: SheetRequest & { readonly body: object }): BodyProfileDto {
    const input = sheetInput(request);
    const { body, garments } = input;
    if (body === null) throw new Error('A profile is of a body.');
    const wearer = wearerOf(input, this.model);
    const profile = wearer.body;
    const next = nextToTake(input, wearer);
    const estimated = Object.values(profile.values).some(({ how }) => how === 'estimated');
    return {
      dimensions: BODY_DIMENSIONS.map((name) => dimensionOf(name, body, profile)),
      questions: this.questionsOf(body).map(questionOf),
      garmentQuestions: garments.flatMap((garment) => garmentBesideBody(garment, profile).map(garmentQuestionOf)),
      next: next && { ...next, how: howToMeasure(next.name) },
      notes: [...profile.notes, ...(estimated ? [BODY_MODEL_MADE_FROM] : [])].map((note) =>
        noteWithText('bodyNote', note, READER),
      ),
    };
  }

  private questionsOf({ figure, ageYears, measures }: Body): readonly Question[] {
    const known = measures.map(({ name, value, how, u }) => ({ name, value, u: u ?? defaultU(name, how).u }));
    return this.model.questionsOf({ figure, ageYears, known });
  }
}

/** Lengths are not told in questions. */
const READER = { tape: 'cm' } as const;

function questionOf(question: Question): QuestionDto {
  const { name, code, params, z } = question;
  return { name, code, params, text: text('bodyQuestion', question, READER), wouldBe: repairsOf(question), z };
}

function garmentQuestionOf(question: GarmentQuestion): GarmentQuestionDto {
  const { name, code, params, wouldBe } = question;
  return { name, code, params, text: text('garmentQuestion', question, READER), wouldBe };
}

function dimensionOf(name: BodyDimension, body: Body, profile: BodyProfile): ProfileDimensionDto {
  const fixed = { name, unit: name === 'weight' ? ('g' as const) : ('mm' as const), taking: howToMeasure(name) };
  const known = profile.values[name];
  if (known === undefined) {
    const why = profile.missing[name];
    const nothing = { value: null, u: null, low: null, high: null, how: null };
    const from = why === undefined ? '' : text('bodyMissing', why, READER);
    return { ...fixed, ...nothing, state: 'missing', from, fromCode: why?.code ?? '', fromParams: why?.params ?? {} };
  }
  const { value, u, how, from } = known;
  const state = body.measures.some((measure) => measure.name === name) ? 'measured' : 'estimated';
  const range = { low: value - HALF_WIDTH_90 * u, high: value + HALF_WIDTH_90 * u };
  const source = { from: text('source', from, READER), fromCode: from.code, fromParams: from.params };
  return { ...fixed, state, value, u, ...range, how, ...source };
}

function repairsOf({ name, wouldBe }: Question): { name: BodyDimension; value: number }[] {
  if (wouldBe === null) return [];
  return typeof wouldBe === 'number' ? [{ name, value: wouldBe }] : [...wouldBe];
}
