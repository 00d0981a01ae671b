import type { LaidOut, Values } from './laid-out.ts';

/** The derivatives of one place by every input, by the chain rule from the place backwards. */
export function gradient(tape: LaidOut, v: Values, of: number): readonly number[] {
  const partials = tape.partials(v);
  const adjoint = v.map((_, place) => (place === of ? 1 : 0));
  for (let place = of; place >= tape.inputs; place--) {
    if (adjoint[place] === 0) continue;
    const start = tape.start(place);
    tape.sources(place).forEach((source, i) => {
      const partial = partials[start + i]!;
      if (partial !== 0) adjoint[source]! += adjoint[place]! * partial;
    });
  }
  return adjoint.slice(0, tape.inputs);
}
