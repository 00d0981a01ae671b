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
  new Layout({
    inputs: [A, B, C],
    named: [],
    rounded: [],
    outputs: [],
    solved: [],
    sheet: [],
    constraints: [],
    ...model,
  });

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

  it('leave out what was solved, and what moves through it alone', () => {
    const around = plus(ROOT, SUM);
    const solved = layoutOf({ rounded: [SUM], outputs: [ROOT, times(2, ROOT), around, DOUBLE], solved: [ROOT] });
    expect(solved.followers(SUM).map(({ output }) => output)).toEqual([2, 3]);
  });
});

describe('the inputs that a judged quantity depends on', () => {
  it('are those that enter it beside the numbers of the sheet', () => {
    const spare = minus(ROOT, B);
    const layout = layoutOf({ named: [spare], sheet: [SUM] });
    expect(layout.dependencies(spare).map(({ input }) => input)).toEqual([0, 1, 2]);
    expect(layout.judgedDependencies(spare).map(({ input }) => input)).toEqual([1, 2]);
    expect(layout.judgedDependencies(SUM)).toEqual([]);
  });
});

describe('the column of a quantity', () => {
  it('stands among those of the plan by its inputs, among those of what is rounded, or is made once', () => {
    const layout = layoutOf({ named: [ROOT, DOUBLE], rounded: [SUM, ROOT] });
    expect([A, B, C, SUM, ROOT].map((each) => layout.column(each).at)).toEqual([0, 1, 2, 0, 1]);
    for (const each of [A, B, C]) expect(layout.column(each).jacobian).toBe(layout.planned);
    const rounded = layout.column(SUM).jacobian;
    expect(rounded).not.toBe(layout.planned);
    expect(layout.column(ROOT).jacobian).toBe(rounded);
    const own = layout.column(DOUBLE);
    expect(own.jacobian).not.toBe(rounded);
    expect(layout.column(DOUBLE)).toBe(own);
  });
});

describe('the constraints on a quantity', () => {
  const proportional = minus(DOUBLE, C);
  const bent = minus(ROOT, C);
  const beyondBent = plus(max(SUM, C), proportional);
  const apart = times(3, C);
  const layout = layoutOf({ rounded: [SUM], sheet: [SUM, C], constraints: [proportional, bent, beyondBent, apart] });

  it('are in proportion where only sums lie between, and else not', () => {
    const { linear, nonlinear } = layout.constrained(SUM);
    expect(linear).toEqual([proportional]);
    expect(nonlinear).toEqual([bent, beyondBent]);
  });

  it('have what of the sheet moves with it', () => {
    const placesMoving = (by: Quantity): number[] => layout.constrained(by).moving.map(({ place }) => place);
    expect(placesMoving(SUM)).toEqual([layout.tape.place(SUM)]);
    expect(placesMoving(C)).toEqual([layout.tape.place(C)]);
  });

  it('are those of the numbers that follow it too, and through no other number of the sheet', () => {
    const follows = plus(SUM, C);
    const apartFromSum = minus(follows, B);
    const followed = layoutOf({ rounded: [SUM], sheet: [SUM, follows], constraints: [apartFromSum] });
    expect(followed.constrained(SUM).linear).toEqual([apartFromSum]);
    expect(followed.constrained(SUM).moving).toHaveLength(2);
    const held = layoutOf({ rounded: [SUM], sheet: [SUM, follows], solved: [follows], constraints: [apartFromSum] });
    expect(held.constrained(SUM).linear).toEqual([]);
  });

  it('leave out those that it does not enter', () => {
    expect(layout.constrained(SUM).linear).not.toContain(apart);
    expect(layout.constrained(C).linear).toContain(apart);
  });

  /** The sum from 2 + 3 to 10. */
  it('have a path that evaluates them', () => {
    const { tape } = layout;
    const evaluated = tape.evaluate([2, 3, 12]);
    const moved = evaluated.slice();
    moved[tape.place(SUM)] = 10;
    tape.evaluateAgain(moved, layout.constrained(SUM).path);
    const expected = tape.evaluate([7, 3, 12]);
    for (const each of [proportional, bent, beyondBent])
      expect(moved[tape.place(each)]).toBe(expected[tape.place(each)]);
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
