import type { Operation, Quantity, Root } from '#measure';
import { crossing } from './crossing.ts';
import { gradient } from './gradient.ts';
import type { LaidOut } from './laid-out.ts';

/** An operation and the quantities it takes. */
interface Implicit {
  readonly operation: Operation;
  readonly sources: readonly Quantity[];
}

/**
 * The function that a root is of everything else in its residual f(x, s): its value by a bracketing solver, its partial
 * derivatives by the implicit function theorem, ∂x/∂s = −(∂f/∂s)/(∂f/∂x). At an end of its interval it does not move.
 * `layOut` makes a tape.
 */
export function implicitFunction(
  { unknown, residual, lower, upper, clamped }: Root,
  layOut: (inputs: readonly Quantity[], named: readonly Quantity[]) => LaidOut,
): Implicit {
  const sources = independentOf(unknown, residual);
  const tape = layOut([unknown, ...sources], [residual]);
  const place = tape.place(residual);
  const at = (x: number, given: readonly number[]): number => tape.evaluate([x, ...given])[place]!;
  return {
    sources,
    operation: {
      value: (given) => {
        const least = at(lower, given);
        if (Number.isNaN(least)) return NaN;
        if (least >= 0) return clamped ? lower : NaN;
        const most = at(upper, given);
        if (!(most > 0)) return clamped ? upper : NaN;
        return crossing([lower, least], [upper, most], (x) => at(x, given));
      },
      partials: (given, x) => {
        if (!(x > lower && x < upper)) return given.map(() => 0);
        const [ofUnknown, ...ofSources] = gradient(tape, tape.evaluate([x, ...given]), place);
        return ofSources.map((each) => -each / ofUnknown!);
      },
    },
  };
}

/** The largest parts of a formula that do not depend on an unknown, each once. */
function independentOf(unknown: Quantity, formula: Quantity): Quantity[] {
  const depends = new Map<Quantity, boolean>([[unknown, true]]);
  const dependsOn = (of: Quantity): boolean => {
    const known = depends.get(of) ?? sourcesOf(of).some(dependsOn);
    depends.set(of, known);
    return known;
  };
  const found = new Set<Quantity>();
  const collect = (of: Quantity): void => {
    if (of === unknown) return;
    if (!dependsOn(of)) found.add(of);
    else sourcesOf(of).forEach(collect);
  };
  collect(formula);
  return [...found];
}

function sourcesOf(quantity: Quantity): readonly Quantity[] {
  switch (quantity.kind) {
    case 'input':
      return [];
    case 'sum':
      return quantity.terms.map(({ of }) => of);
    case 'applied':
      return quantity.sources;
    case 'root':
      return independentOf(quantity.unknown, quantity.residual);
  }
}
