import { BODY_DIMENSIONS, defaultU, type BodyDimension, type BodyModel, type Question as Doubt } from '#body';
import type { Question } from '../body/Ask.tsx';
import { say } from '../messages.ts';
import type { BodyNotes } from '../notebook/notebook.ts';
import type { Typed } from '../notebook/typed.ts';
import { showLength } from '../reading/numbers.ts';
import { namesUnit } from '../reading/read.ts';
import { written, writtenMass } from './apply-remedy.ts';
import { isOutOfReach, outOfReach } from './out-of-reach.ts';
import type { ReadBody } from './to-body.ts';

type BodyQuestion = Question<BodyDimension>;
type Questions = Partial<Record<BodyDimension, BodyQuestion>>;

/** What looks like a slip, and what it would become; what she has confirmed is not asked again. */
export function questionsAbout(notes: BodyNotes, { body, leftOut }: ReadBody, model: BodyModel | null): Questions {
  const questions: Questions = {};
  for (const name of BODY_DIMENSIONS) {
    const typed = notes.measures[name];
    if (typed && isOutOfReach(body.figure, name, typed) && (leftOut.has(name) || typed.confirmed !== typed.text))
      questions[name] = outOfReach(body.figure, name, typed, leftOut.has(name));
  }
  const known = body.measures.map(({ name, value, how, u }) => ({ name, value, u: u ?? defaultU(name, how).u }));
  const doubts = model?.questionsOf({ figure: body.figure, ageYears: body.ageYears, known }) ?? [];
  for (const doubt of doubts) {
    const typed = notes.measures[doubt.name];
    if (typed === undefined || typed.confirmed === typed.text) continue;
    questions[doubt.name] = { text: textOf(doubt), repairs: repairsOf(doubt, notes, typed), mayBeRight: true };
  }
  return questions;
}

/** Short, for the small place beside a value. */
function textOf({ code, name, wouldBe }: Doubt): string {
  const words = say.body.slip;
  if (code !== 'swapped-fields') return words[code];
  const other = Array.isArray(wouldBe)
    ? (wouldBe as { name: BodyDimension }[]).find((it) => it.name !== name)
    : undefined;
  return words[code](say.dimension[other?.name ?? name]);
}

function repairsOf({ name, code, wouldBe }: Doubt, notes: BodyNotes, typed: Typed): BodyQuestion['repairs'] {
  if (wouldBe === null) return [];
  if (typeof wouldBe !== 'number') {
    const [one, other] = wouldBe;
    const [a, b] = [one && notes.measures[one.name], other && notes.measures[other.name]];
    if (!one || !other || !a || !b) return [];
    return [{ label: say.body.swap, to: { [one.name]: b, [other.name]: a } }];
  }
  if (code === 'inches-as-centimetres' && !namesUnit(typed.text)) return unitSlip(name, typed, 'in');
  if (code === 'centimetres-as-inches' && !namesUnit(typed.text)) return unitSlip(name, typed, 'cm');
  if (code === 'pounds-as-kilograms' && !namesUnit(typed.text)) {
    return [{ label: say.body.itIs(`${typed.text.trim()} lb`), to: { [name]: { text: typed.text, tape: 'in' } } }];
  }
  if (name === 'weight') {
    const to = writtenMass(wouldBe, typed.tape);
    return [{ label: say.body.itIs(`${to.text} ${typed.tape === 'cm' ? 'kg' : 'lb'}`), to: { [name]: to } }];
  }
  return [{ label: say.body.itIs(showLength(wouldBe, typed.tape)), to: { [name]: written(wouldBe, typed.tape) } }];
}

/** The same figures, read on the other tape. */
const unitSlip = (name: BodyDimension, { text }: Typed, tape: Typed['tape']): BodyQuestion['repairs'] => [
  { label: say.body.itIs(`${text.trim()} ${tape}`), to: { [name]: { text, tape } } },
];
