import { ASSEMBLED_NAMES, PIECE_DIMENSION_NAMES, PIECES } from '#fit';
import { plainNumber } from '../reading/read.ts';
import type { Planner, PlannerDto } from '../api/planner-repository.ts';

export type Unit = 'mm' | 'cm' | 'in';
export type Format = 'flat' | 'csv' | 'sheet';

/** One of the planner's names: what it calls a thing of the sheet, and whether it cannot do without. */
export interface NamedThing {
  readonly ours: string;
  readonly theirs: string;
  readonly required: boolean;
}

/** A planner as it is being written down. */
export interface PlannerNotes {
  readonly title: string;
  readonly address: string;
  readonly unit: Unit;
  readonly format: Format;
  readonly step: string;
  readonly names: readonly NamedThing[];
}

export const blankPlanner: PlannerNotes = { title: '', address: '', unit: 'cm', format: 'flat', step: '', names: [] };

/** What a sheet says beside its measures that a planner can take in. */
export const FACTS = ['sheet/title', 'sheet/id', 'sheet/unit', 'sheet/created-at', 'design/construction'] as const;
export type Fact = (typeof FACTS)[number];

/** Everything of a sheet that can be named, in the order of the sheet. */
export const OURS: readonly string[] = [
  ...FACTS,
  ...ASSEMBLED_NAMES.map((name) => `assembled/${name}`),
  ...PIECES.flatMap((piece) => PIECE_DIMENSION_NAMES.map((name) => `${piece}/${name}`)),
];

/** As the store takes it. A rounding step that cannot be read goes as 0, which the store refuses in words. */
export function toPlannerDto({ title, address, unit, format, step, names }: PlannerNotes): PlannerDto {
  const named = format === 'sheet' ? [] : names.filter(({ theirs }) => theirs.trim() !== '');
  return {
    title: title.trim(),
    address: address.trim() === '' ? null : address.trim(),
    takes: {
      unit,
      format,
      roundingStep: format === 'sheet' || step.trim() === '' ? null : (plainNumber(step) ?? 0),
      names: Object.fromEntries(named.map(({ ours, theirs }) => [ours, theirs.trim()])),
      required: named.filter(({ required }) => required).map(({ ours }) => ours),
    },
  };
}

export function fromPlanner({ title, address, takes }: Planner): PlannerNotes {
  const required = new Set(takes?.required ?? []);
  return {
    title,
    address: address ?? '',
    unit: takes?.unit ?? 'mm',
    format: takes?.format ?? 'flat',
    step: takes?.roundingStep == null ? '' : String(takes.roundingStep),
    names: Object.entries(takes?.names ?? {}).map(([ours, theirs]) => ({ ours, theirs, required: required.has(ours) })),
  };
}
