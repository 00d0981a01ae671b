import { describe, expect, it } from 'vitest';
import { EASE_CHANGE_BY_WEARS } from './ease-change.ts';
import { REGIONS } from './garment.ts';

describe.each(REGIONS)('ease change at the %s', (region) => {
  const { close, right, roomy } = EASE_CHANGE_BY_WEARS[region];

  it('is nothing where it wears right, more where it is close, as much less where it is roomy', () => {
    expect(right).toBe(0);
    expect(close).toBeGreaterThan(0);
    expect(roomy).toBe(-close);
  });
});
