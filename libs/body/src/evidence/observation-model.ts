import { bodyError } from '../body-errors.ts';
import type { BentTerm, Observation } from './observation.ts';

/** What an observation depends on: the place of a dimension's logarithm, or of a hidden number, in the state. */
type Term =
  { readonly place: number; readonly coefficient: number } | { readonly place: number; readonly bend: BentTerm };

/** An observation as it is at some state: what it is expected to be, and its derivatives that are not 0. */
interface Linearised {
  readonly expected: number;
  readonly places: readonly number[];
  readonly derivatives: readonly number[];
}

/** The observations as functions of one state: the logarithms of all dimensions, then the hidden numbers. Bent terms have the side they have at `sides`. */
export type ObservationModel = (state: readonly number[], sides?: readonly number[]) => readonly Linearised[];

/** @throws DomainError `unknown-term` where an observation rests on something that has no prior. */
export function observationModel(names: readonly string[], observations: readonly Observation[]): ObservationModel {
  const place = (name: string) => {
    const found = names.indexOf(name);
    if (found === -1) throw bodyError('unknown-term', { name, known: names });
    return found;
  };
  const terms = observations.map(({ dimensions, hidden }): readonly Term[] => [
    ...Object.entries(dimensions).map(([name, coefficient]) => ({ place: place(name), coefficient })),
    ...Object.entries(hidden).map(([name, term]) => ({
      place: place(name),
      bend: typeof term === 'number' ? { at: 0, below: term, above: term } : term,
    })),
  ]);
  return (state, sides = state) =>
    terms.map((ofOne, index) => {
      let expected = observations[index]!.constant;
      const derivatives = ofOne.map((term) => {
        const x = state[term.place]!;
        if ('coefficient' in term) {
          const value = term.coefficient * Math.exp(x);
          expected += value;
          return value;
        }
        const { at, below, above } = term.bend;
        const isAbove = sides[term.place]! > at;
        expected += isAbove ? below * at + above * (x - at) : below * x;
        return isAbove ? above : below;
      });
      return { expected, places: ofOne.map((term) => term.place), derivatives };
    });
}
