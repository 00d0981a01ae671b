import { bodyProblems, humanLimits, type BodyDimension, type Figure } from '#body';
import type { ValueQuestion } from './value-question.ts';
import { showMeasure } from '../reading/shown-value.ts';
import { say } from '../messages.ts';
import type { Tape, Typed } from '../notebook/typed.ts';
import { withoutUnit } from '../reading/numbers.ts';
import { namesUnit, read, valueIn, type Quantity } from '../reading/read.ts';

/** True for a value that nobody of this figure has. */
export const isOutOfRange = (figure: Figure, name: BodyDimension, typed: Typed): boolean => {
  const value = valueIn(typed, quantityOf(name));
  return value !== null && out(figure, name, value) > 1;
};

/** The question about an impossible value, in the unit it was entered in; a number without a unit may have been meant in another. */
export function outOfReach(
  figure: Figure,
  name: BodyDimension,
  typed: Typed,
  leftOut: boolean,
): ValueQuestion<BodyDimension> {
  const words = say.body;
  const reading = read(typed, quantityOf(name));
  const { value, tape } = reading.is === 'value' ? reading : { value: 0, tape: typed.tape };
  const show = (it: number): string => showMeasure(it, name, tape);
  const [least, most] = humanLimits(figure, name);
  const said = words.outOfReach(
    say.dimension[name],
    show(value),
    words.whose[figure],
    withoutUnit(show(least)),
    show(most),
  );
  const units = namesUnit(typed.text) ? [] : otherUnits(name, typed);
  const meant = units.find((unit) => isNearer(figure, name, unit.to, value));
  const text = [said, leftOut && words.leftOut, meant && words.were[meant.named]].filter(Boolean).join(' ');
  const repairs = meant ? [{ label: words.itIs(`${typed.text.trim()} ${meant.named}`), to: { [name]: meant.to } }] : [];
  return { text, repairs, mayBeRight: !leftOut };
}

interface InUnit {
  readonly named: keyof typeof say.body.were;
  readonly to: Typed;
}

/** The same digits in the units that may have been meant. */
function otherUnits(name: BodyDimension, { text, tape }: Typed): readonly InUnit[] {
  const other: Tape = tape === 'cm' ? 'in' : 'cm';
  if (name === 'weight') return [{ named: other === 'cm' ? 'kg' : 'lb', to: { text, tape: other } }];
  return [
    { named: other, to: { text, tape: other } },
    { named: 'mm', to: { text: `${text.trim()} mm`, tape } },
  ];
}

/** The ratio by which a value exceeds the upper limit or falls below the lower; at most 1 within the limits. */
function out(figure: Figure, name: BodyDimension, value: number): number {
  const [least, most] = humanLimits(figure, name);
  return Math.max(least / value, value / most);
}

/** True where another reading is valid and closer to the limits. */
function isNearer(figure: Figure, name: BodyDimension, other: Typed, value: number): boolean {
  const meant = valueIn(other, quantityOf(name));
  if (meant === null || out(figure, name, meant) >= out(figure, name, value)) return false;
  return bodyProblems({ figure, ageYears: null, measures: [{ name, value: meant, how: 'home' }] }).length === 0;
}

const quantityOf = (name: BodyDimension): Quantity => (name === 'weight' ? 'mass' : 'length');
