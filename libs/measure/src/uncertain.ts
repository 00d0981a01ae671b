import { measureError } from './measure-errors.ts';

/**
 * A value that remembers what it was made from: for each independent input its component of uncertainty cᵢuᵢ, sign kept
 * (JCGM 100:2008, 5.1.3), in the value's own unit. So x − x is exact, and nothing is counted twice.
 */
export interface Uncertain {
  readonly value: number;
  readonly components: ReadonlyMap<string, number>;
}

/** How far two named inputs move together, −1 to 1; the order of the names does not matter. */
export interface Correlation {
  readonly between: readonly [string, string];
  readonly r: number;
}

/** A named input with its standard uncertainty (≥ 0). Two inputs of one name are one input: they move together. */
export function input(name: string, value: number, u: number): Uncertain {
  if (!(u >= 0)) throw measureError('uncertainty-invalid', { name, u });
  return { value, components: new Map([[name, u]]) };
}

/** A number without doubt. */
export function exactly(value: number): Uncertain {
  return { value, components: new Map() };
}

/** The standard uncertainty of a value (equations 10 and 16). */
export function standardUncertainty(of: Uncertain, correlations: readonly Correlation[] = []): number {
  let variance = 0;
  for (const component of of.components.values()) variance += component * component;
  for (const { between, r } of correlations) {
    variance += 2 * r * (of.components.get(between[0]) ?? 0) * (of.components.get(between[1]) ?? 0);
  }
  return Math.sqrt(Math.max(0, variance));
}

export function add(a: Uncertain, b: Uncertain): Uncertain {
  return linear(a.value + b.value, a, 1, b, 1);
}

export function subtract(a: Uncertain, b: Uncertain): Uncertain {
  return linear(a.value - b.value, a, 1, b, -1);
}

export function scale(a: Uncertain, by: number): Uncertain {
  return linear(a.value * by, a, by);
}

export function multiply(a: Uncertain, b: Uncertain): Uncertain {
  return linear(a.value * b.value, a, b.value, b, a.value);
}

/** @throws DomainError `division-by-zero` */
export function divide(a: Uncertain, b: Uncertain): Uncertain {
  if (b.value === 0) throw measureError('division-by-zero', {});
  return linear(a.value / b.value, a, 1 / b.value, b, -a.value / (b.value * b.value));
}

/** @throws DomainError `root-not-differentiable` unless the value is above 0, where a root has a slope. */
export function squareRoot(a: Uncertain): Uncertain {
  if (!(a.value > 0)) throw measureError('root-not-differentiable', { value: a.value });
  const root = Math.sqrt(a.value);
  return linear(root, a, 1 / (2 * root));
}

/** To first order: the components of a and b, each times its slope. */
function linear(value: number, a: Uncertain, slopeA: number, b?: Uncertain, slopeB = 0): Uncertain {
  const components = new Map<string, number>();
  for (const [name, component] of a.components) components.set(name, slopeA * component);
  for (const [name, component] of b?.components ?? []) {
    components.set(name, (components.get(name) ?? 0) + slopeB * component);
  }
  return { value, components };
}
