import { describe, expect, it } from 'vitest';
import { hypot, max, minus, plus, times, unknown, type Quantity } from '#measure';
import { Layout, type Model } from './layout.ts';

const A = unknown();
const B = unknown();
const C = unknown();
const SUM = plus(A, B);
const ROOT = hypot(SUM, C);
const DOUBLE = times(2, SUM);

const layoutOf = (model: Partial<Model>): Layout =>
  new Layout({ inputs: [A, B, C], named: [], rounded: [], outputs: [], constraints: [], ...model });

describe('the dependencies of a quantity', () => {
  it('are the inputs that it is made of, in their order', () => {
    const layout = layoutOf({ named: [ROOT, DOUBLE] });
    expect(layout.dependencies(ROOT).map(({ input }) => input)).toEqual([0, 1, 2]);
    expect(layout.dependencies(DOUBLE).map(({ input }) => input)).toEqual([0, 1]);
    expect(layout.dependencies(C).map(({ input }) => input)).toEqual([2]);
  });

  it('leave out one that is taken no times', () => {
    const of = minus(plus(A, B), times(0, C));
    expect(
      layoutOf({ named: [of] })
        .dependencies(of)
        .map(({ input }) => input),
    ).toEqual([0, 1]);
  });
});

describe('the followers of a quantity', () => {
  it('are the outputs that may move with it, by their place among the outputs', () => {
    const layout = layoutOf({ rounded: [SUM], outputs: [C, ROOT, DOUBLE] });
    expect(layout.followers(SUM).map(({ output }) => output)).toEqual([1, 2]);
    expect(layout.followers(C).map(({ output }) => output)).toEqual([0, 1]);
    expect(layout.followers(DOUBLE).map(({ output }) => output)).toEqual([2]);
  });
});

describe('the column of a quantity', () => {
  it('stands among those of the inputs and of what is rounded, or is made once', () => {
    const layout = layoutOf({ named: [ROOT, DOUBLE], rounded: [SUM] });
    expect([A, B, C, SUM].map((each) => layout.column(each).at)).toEqual([0, 1, 2, 3]);
    expect(layout.column(SUM).jacobian).toBe(layout.jacobian);
    const own = layout.column(DOUBLE);
    expect(own.jacobian).not.toBe(layout.jacobian);
    expect(layout.column(DOUBLE)).toBe(own);
  });
});

describe('the constraints on a quantity', () => {
  const proportional = minus(DOUBLE, C);
  const bent = minus(ROOT, C);
  const beyondBent = plus(max(SUM, C), proportional);
  const apart = times(3, C);
  const layout = layoutOf({ rounded: [SUM, A], constraints: [proportional, bent, beyondBent, apart] });

  it('are in proportion where only sums lie between, and else not', () => {
    const { linear, nonlinear } = layout.constrained(SUM);
    expect(linear).toEqual([proportional]);
    expect(nonlinear).toEqual([bent, beyondBent]);
  });

  it('leave out those that it does not enter', () => {
    expect(layout.constrained(SUM).linear).not.toContain(apart);
    expect(layout.constrained(C).linear).toContain(apart);
  });

  it('that are not in proportion have a path that evaluates them', () => {
    const { tape } = layout;
    const evaluated = tape.evaluate([2, 3, 12]);
    const moved = evaluated.slice();
    moved[tape.place(A)] = 7;
    tape.evaluateAgain(moved, layout.constrained(A).path);
    const expected = tape.evaluate([7, 3, 12]);
    for (const each of [bent, beyondBent]) expect(moved[tape.place(each)]).toBe(expected[tape.place(each)]);
  });
});

describe('the path between two quantities', () => {
  const layout = layoutOf({ named: [SUM, ROOT, DOUBLE] });
  const placesOf = (...all: readonly Quantity[]): number[] => all.map((each) => layout.tape.place(each));

  it('has what depends on the one and leads to the other, the last included', () => {
    expect(layout.path(A, ROOT)).toEqual(placesOf(SUM, ROOT));
    expect(layout.path(SUM, ROOT)).toEqual(placesOf(ROOT));
    expect(layout.path(C, ROOT)).toEqual(placesOf(ROOT));
  });

  it('is empty where there is none', () => {
    expect(layout.path(C, DOUBLE)).toEqual([]);
    expect(layout.path(ROOT, SUM)).toEqual([]);
  });
});
