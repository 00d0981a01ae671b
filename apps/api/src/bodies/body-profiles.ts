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
import { favouritesOf, rulesWith } from '#fit';
import { normalQuantile } from '#measure';
import { nextToTake, wearerOf } from '#target-sheet';
import { BODY_MODEL } from '../body-model/body-model.module.ts';
import { sheetInput } from '../target-sheets/sheet-input.ts';
import type { SheetRequest } from '../target-sheets/sheet-request.ts';
import type { BodyProfileDto, ProfileDimensionDto, QuestionDto } from './profile.dto.ts';
import { contradictionsOf, garmentQuestionsOf, sweatersOf } from './garment-profiles.ts';

/** Half the width of a 90 % interval, in standard uncertainties. */
const HALF_WIDTH_90 = normalQuantile(0.95);

/** What is known of a wearer: measured, estimated and missing side by side, what her garments say, with questions and the measure to take next. */
@Injectable()
export class BodyProfiles {
  constructor(@Inject(BODY_MODEL) private readonly model: BodyModel) {}

  of(request: SheetRequest): BodyProfileDto {
    const input = sheetInput(request);
    const wearer = wearerOf(input, this.model, BODY_DIMENSIONS);
    const profile = wearer.body;
    const entered = (request.body?.measures ?? []).map(({ name }) => name);
    const next = nextToTake(input, wearer);
    const estimated = Object.values(profile.values).some(({ how }) => how === 'estimated');
    const rules = rulesWith(input.rules);
    return {
      dimensions: BODY_DIMENSIONS.map((name) => dimensionOf(name, entered, profile)),
      questions: this.questionsOf(input.body, entered).map(questionOf),
      garmentQuestions: garmentQuestionsOf(input.garments, profile),
      contradictions: contradictionsOf(wearer),
      sweaters: sweatersOf(wearer, rules),
      favourites: favouritesOf(wearer, rules),
      next: next && { ...next, how: howToMeasure(next.name) },
      notes: [...profile.notes, ...(estimated ? [BODY_MODEL_MADE_FROM] : [])].map((note) =>
        noteWithText('bodyNote', note, READER),
      ),
    };
  }

  /** About what was entered: a published size asks nothing. */
  private questionsOf(body: Body | null, entered: readonly BodyDimension[]): readonly Question[] {
    if (body === null) return [];
    const { figure, ageYears, measures } = body;
    const known = measures
      .filter(({ name }) => entered.includes(name))
      .map(({ name, value, how, u }) => ({ name, value, u: u ?? defaultU(name, how).u }));
    return this.model.questionsOf({ figure, ageYears, known });
  }
}

/** Lengths are not told in questions. */
const READER = { tape: 'cm' } as const;

function questionOf(question: Question): QuestionDto {
  const { name, code, params, z } = question;
  return { name, code, params, text: text('bodyQuestion', question, READER), wouldBe: repairsOf(question), z };
}

function dimensionOf(
  name: BodyDimension,
  entered: readonly BodyDimension[],
  profile: BodyProfile,
): ProfileDimensionDto {
  const fixed = { name, unit: name === 'weight' ? ('g' as const) : ('mm' as const), taking: howToMeasure(name) };
  const known = profile.values[name];
  if (known === undefined) {
    const why = profile.missing[name];
    const nothing = { value: null, u: null, low: null, high: null, how: null, outsideSurveys: false };
    const from = why === undefined ? '' : text('bodyMissing', why, READER);
    return { ...fixed, ...nothing, state: 'missing', from, fromCode: why?.code ?? '', fromParams: why?.params ?? {} };
  }
  const { value, u, how, from, outsideSurveys = false } = known;
  const state = entered.includes(name) ? 'measured' : 'estimated';
  const range = { low: value - HALF_WIDTH_90 * u, high: value + HALF_WIDTH_90 * u };
  const source = { from: text('source', from, READER), fromCode: from.code, fromParams: from.params };
  return { ...fixed, state, value, u, ...range, how, outsideSurveys, ...source };
}

function repairsOf({ name, wouldBe }: Question): { name: BodyDimension; value: number }[] {
  if (wouldBe === null) return [];
  return typeof wouldBe === 'number' ? [{ name, value: wouldBe }] : [...wouldBe];
}
