import { DomainError } from '#measure';
import type { FabricInput } from './fabric.ts';

/** What is believed of a fabric, both ends included; wide enough for cobweb lace and for arm-knitted roving (assumed). */
const LIMITS = {
  thicknessMm: { from: 0.2, to: 40, unit: ' mm' },
  thicknessU: { from: 0, to: 20, unit: ' mm' },
  wrapsPerInch: { from: 1, to: 100, unit: '' },
  metresPer100g: { from: 2, to: 3000, unit: ' m' },
  massPerAreaGsm: { from: 10, to: 10_000, unit: ' g/m²' },
  ribStretch: { from: 0, to: 5, unit: '' },
} as const;
const STRETCH = { from: 0, to: 5, unit: '' };
/** Half or double of what was made is no fabric to plan with. */
const GROWTH = { from: -0.5, to: 1, unit: '' };

interface Limits {
  readonly from: number;
  readonly to: number;
  readonly unit: string;
}

/**
 * @throws DomainError `fabric-out-of-range` (a number that cannot be right), `weight-category-unknown`, `stitch-of-other-craft`,
 * with a pointer to the field
 */
export function checkFabric(input: FabricInput): void {
  for (const [field, limits] of Object.entries(LIMITS))
    within(input[field as keyof typeof LIMITS], limits, `/${field}`);
  for (const axis of ['across', 'along'] as const) {
    within(input.stretch?.[axis] ?? null, STRETCH, `/stretch/${axis}`);
    within(input.growth?.[axis] ?? null, GROWTH, `/growth/${axis}`);
  }
  const { weightCategory, craft, stitch } = input;
  if (weightCategory !== null && !(Number.isInteger(weightCategory) && weightCategory >= 0 && weightCategory <= 7))
    throw new DomainError(
      'weight-category-unknown',
      `A yarn’s weight category is 0, 1, 2 … 7; ${weightCategory} is not.`,
      '/weightCategory',
    );
  if (stitch !== null && (stitch === 'stockinette') !== (craft === 'knit'))
    throw new DomainError(
      'stitch-of-other-craft',
      `${stitch} is not worked in ${craft}. Knit goes with stockinette, crochet with single-crochet.`,
      '/stitch',
    );
}

function within(value: number | null, { from, to, unit }: Limits, pointer: string): void {
  if (value === null || (value >= from && value <= to)) return;
  throw new DomainError(
    'fabric-out-of-range',
    `${value}${unit} cannot be right here; it is from ${from} to ${to}${unit}.`,
    pointer,
  );
}
