import { BODY_DIMENSIONS, defaultU, type BodyDimension, type BodyModel, type Question as Slip } from '#body';
import type { ValueQuestion } from './value-question.ts';
import { say } from '../messages.ts';
import type { BodyNotes } from '../notebook/notebook.ts';
import type { Typed } from '../notebook/typed.ts';
import { showLength } from '../reading/numbers.ts';
import { namesUnit } from '../reading/read.ts';
import { lengthText, massText } from './apply-remedy.ts';
import { isOutOfRange, outOfReach } from './out-of-range.ts';
import type { ReadBody } from './to-body.ts';

type BodyQuestion = ValueQuestion<BodyDimension>;
type Questions = Partial<Record<BodyDimension, BodyQuestion>>;

/** Questions about probable slips, with the corrected values; confirmed values are not questioned again. */
export function bodyQuestions(notes: BodyNotes, { body, leftOut }: ReadBody, model: BodyModel | null): Questions {
  const questions: Questions = {};
  for (const name of BODY_DIMENSIONS) {
    const typed = notes.measures[name];
    if (typed && isOutOfRange(body.figure, name, typed) && (leftOut.has(name) || typed.confirmed !== typed.text))
      questions[name] = outOfReach(body.figure, name, typed, leftOut.has(name));
  }
  const known = body.measures.map(({ name, value, how, u }) => ({ name, value, u: u ?? defaultU(name, how).u }));
  const slips = model?.questionsOf({ figure: body.figure, ageYears: body.ageYears, known }) ?? [];
  for (const slip of slips) {
    const typed = notes.measures[slip.name];
    if (typed === undefined || typed.confirmed === typed.text) continue;
    questions[slip.name] = { text: textOf(slip), repairs: repairsOf(slip, notes, typed), mayBeRight: true };
  }
  return questions;
}

/** A short text, for the small space beside a value. */
function textOf({ code, name, wouldBe }: Slip): string {
  const words = say.body.slip;
  if (code !== 'swapped-fields') return words[code];
  const other = Array.isArray(wouldBe)
    ? (wouldBe as { name: BodyDimension }[]).find((it) => it.name !== name)
    : undefined;
  return words[code](say.dimension[other?.name ?? name]);
}

function repairsOf({ name, code, wouldBe }: Slip, notes: BodyNotes, typed: Typed): BodyQuestion['repairs'] {
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
    const to = massText(wouldBe, typed.tape);
    return [{ label: say.body.itIs(`${to.text} ${typed.tape === 'cm' ? 'kg' : 'lb'}`), to: { [name]: to } }];
  }
  return [{ label: say.body.itIs(showLength(wouldBe, typed.tape)), to: { [name]: lengthText(wouldBe, typed.tape) } }];
}

/** The same digits, read in the other unit. */
const unitSlip = (name: BodyDimension, { text }: Typed, tape: Typed['tape']): BodyQuestion['repairs'] => [
  { label: say.body.itIs(`${text.trim()} ${tape}`), to: { [name]: { text, tape } } },
];
