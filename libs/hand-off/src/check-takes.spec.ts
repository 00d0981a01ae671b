import { describe, expect, it } from 'vitest';
import { checkTakes } from './check-takes.ts';
import type { PlannerTakes } from './planner-takes.ts';

const takes = (more: Partial<PlannerTakes> = {}): PlannerTakes => ({
  unit: 'in',
  roundingStep: 0.25,
  format: 'flat',
  names: { 'back/width': '/back/width_in', 'sleeve/sleeve-length/as-made': '/sleeve/len' },
  required: ['back/width'],
  ...more,
});
const faults = (more: Partial<PlannerTakes>) =>
  checkTakes(takes(more)).map(({ code, pointer }) => `${code} ${pointer}`);

describe('checkTakes', () => {
  it('finds nothing in a good one', () => {
    expect(checkTakes(takes())).toEqual([]);
    expect(checkTakes(takes({ format: 'sheet', roundingStep: null, names: {} }))).toEqual([]);
    expect(checkTakes(takes({ format: 'csv', names: { 'back/width': 'Back, width' } }))).toEqual([]);
  });

  it('finds every fault at once, each with its place', () => {
    const names = { 'chest width': '/a', 'back/width': 'b', 'sheet/colour': '/c', 'front/width': '/a/b' };
    expect(faults({ roundingStep: 0, names, required: ['back/width', 'neck'] })).toEqual([
      'rounding-step /roundingStep',
      'unknown-name /names/chest width',
      'unknown-name /names/sheet~1colour',
      'unknown-name /required/1',
      'their-name /names/back~1width',
      'their-name /names/front~1width',
      'required-not-named /required/1',
    ]);
  });

  it.each([
    ['a step of nothing', { roundingStep: 0 }, 'rounding-step /roundingStep'],
    ['a step below nothing', { roundingStep: -1 }, 'rounding-step /roundingStep'],
    ['no number', { roundingStep: NaN }, 'rounding-step /roundingStep'],
    ['a step of a metre', { roundingStep: 40 }, 'rounding-step /roundingStep'],
    ['a step for a sheet', { format: 'sheet' as const, names: {} }, 'rounding-a-sheet /roundingStep'],
    ['names for a sheet', { format: 'sheet' as const, roundingStep: null }, 'naming-a-sheet /names'],
    [
      'a part nobody has',
      { names: { 'back/width/middle': '/a' }, required: [] },
      'unknown-name /names/back~1width~1middle',
    ],
    [
      'as-made of an assembled width',
      { names: { 'assembled/chest-width/as-made': '/a' }, required: [] },
      'unknown-name /names/assembled~1chest-width~1as-made',
    ],
    [
      'one column twice',
      { format: 'csv' as const, names: { 'back/width': 'w', 'front/width': 'w' } },
      'their-name /names/front~1width',
    ],
    ['a nameless column', { format: 'csv' as const, names: { 'back/width': ' ' } }, 'their-name /names/back~1width'],
    [
      'a column that is a formula',
      { format: 'csv' as const, names: { 'back/width': '=w' } },
      'their-name /names/back~1width',
    ],
    ['required but not sent', { required: ['front/width'] }, 'required-not-named /required/0'],
  ])('refuses %s', (_what, more, expected) => expect(faults(more)).toEqual([expected]));
});
