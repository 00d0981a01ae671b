import type { DomainError } from '#measure';
import { fabricError, type FabricErrors } from './fabric-errors.ts';
import type { FabricInput } from './fabric.ts';

interface Limits {
  readonly from: number;
  readonly to: number;
  readonly unit: FabricErrors['fabric-out-of-range']['unit'];
}

/** What is believed of a fabric, both ends included; wide enough for cobweb lace and for roving knitted on the arms (assumed). */
const LIMITS = {
  thicknessMm: { from: 0.2, to: 40, unit: 'mm' },
  thicknessU: { from: 0, to: 20, unit: 'mm' },
  wrapsPerInch: { from: 1, to: 100, unit: null },
  metresPer100g: { from: 2, to: 3000, unit: 'm' },
  massPerAreaGsm: { from: 10, to: 10_000, unit: 'g/m²' },
  ribStretch: { from: 0, to: 5, unit: null },
} as const satisfies Partial<Record<keyof FabricInput, Limits>>;
const STRETCH: Limits = { from: 0, to: 5, unit: null };
/** A fabric that shrinks to half or grows to double is none to plan with (assumed). */
const GROWTH: Limits = { from: -0.5, to: 1, unit: null };

/**
 * Everything that keeps a fabric from being used, each with a JSON Pointer into it; an empty list when it is sound. Codes:
 * `fabric-out-of-range`, `weight-category-unknown`, `stitch-of-other-craft`.
 */
export function fabricProblems(input: FabricInput): readonly DomainError[] {
  const { stretch, growth } = input;
  return [
    ...(Object.keys(LIMITS) as (keyof typeof LIMITS)[]).flatMap((name) =>
      beyond(input[name], LIMITS[name], `/${name}`),
    ),
    ...(['across', 'along'] as const).flatMap((axis) => [
      ...beyond(stretch?.[axis] ?? null, STRETCH, `/stretch/${axis}`),
      ...beyond(growth?.[axis] ?? null, GROWTH, `/growth/${axis}`),
    ]),
    ...categoryProblems(input),
    ...stitchProblems(input),
  ];
}

function beyond(value: number | null, { from, to, unit }: Limits, pointer: string): DomainError[] {
  if (value === null || (value >= from && value <= to)) return [];
  return [fabricError('fabric-out-of-range', { value, smallest: from, largest: to, unit }, pointer)];
}

function categoryProblems({ weightCategory }: FabricInput): DomainError[] {
  if (weightCategory === null || [0, 1, 2, 3, 4, 5, 6, 7].includes(weightCategory)) return [];
  return [fabricError('weight-category-unknown', { category: weightCategory }, '/weightCategory')];
}

function stitchProblems({ craft, stitch }: FabricInput): DomainError[] {
  if (stitch === null || (stitch === 'stockinette') === (craft === 'knit')) return [];
  return [fabricError('stitch-of-other-craft', { stitch, craft }, '/stitch')];
}
