import { expect, it } from 'vitest';
import type { Fabric } from './fabric.ts';
import { usableOf, usableStretch } from './stretch.ts';

it('is half of what was measured, and none where nothing was', () => {
  expect(usableOf(0.4)).toBe(0.2);
  expect(usableStretch({ stretch: { across: 0.4, along: 0.1 } } as Fabric)).toEqual({ across: 0.2, along: 0.05 });
  expect(usableStretch({ stretch: null } as Fabric)).toEqual({ across: 0, along: 0 });
});
