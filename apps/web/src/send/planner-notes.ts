import { ASSEMBLED_NAMES, PIECE_DIMENSION_NAMES, PIECES } from '#fit';
import type { PlannerFormat } from '#hand-off';
import { carrying } from '../reading/carrying.ts';
import { plainNumber } from '../reading/read.ts';
import type { PlannerDto } from '../api/planner-repository.ts';

export type Unit = 'mm' | 'cm' | 'in';

/** One of the planner's names: what it calls a field of the sheet, and whether it requires it. */
export interface NamedThing {
  readonly ours: string;
  readonly theirs: string;
  readonly required: boolean;
}

/** A planner as it is being entered. */
export interface PlannerNotes {
  readonly title: string;
  readonly address: string;
  readonly unit: Unit;
  readonly format: PlannerFormat;
  readonly step: string;
  readonly names: readonly NamedThing[];
  /** The stored planner that this was read from. */
  readonly record?: StoredPlanner;
}

/** A planner as the store holds it: every field is there. */
interface StoredPlanner {
  readonly title: string;
  readonly address: string | null;
  readonly takes: Takes;
}

/** What it takes in, with mutable lists: so the API's client has them. */
interface Takes {
  readonly unit: Unit;
  readonly format: PlannerFormat;
  readonly roundingStep: number | null;
  readonly names: Record<string, string>;
  readonly required: string[];
}

export const blankPlanner: PlannerNotes = { title: '', address: '', unit: 'cm', format: 'flat', step: '', names: [] };

/** What a sheet has beside its dimensions that a planner can take. */
const FACTS = ['sheet/title', 'sheet/id', 'sheet/unit', 'sheet/created-at', 'design/construction'] as const;
export type Fact = (typeof FACTS)[number];

/** Every field of a sheet that can be named, in the order of the sheet. */
export const OURS: readonly string[] = [
  ...FACTS,
  ...ASSEMBLED_NAMES.map((name) => `assembled/${name}`),
  ...PIECES.flatMap((piece) => PIECE_DIMENSION_NAMES.map((name) => `${piece}/${name}`)),
];

/** The request for the API. An unreadable rounding step is sent as 0, which the API rejects with its reason. */
export function toPlannerDto(notes: PlannerNotes): PlannerDto {
  const { title, address, unit, format, step } = notes;
  const carry = carrying<PlannerNotes, StoredPlanner>(notes, fromPlanner);
  const named = format === 'sheet' ? [] : notes.names.filter(({ theirs }) => theirs.trim() !== '');
  // A sheet as such is neither rounded nor renamed.
  const namesShown = (it: PlannerNotes) => [it.format === 'sheet', it.names];
  return {
    title: carry(({ title }) => title, ({ title }) => title, () => title.trim()),
    address: carry(({ address }) => address, ({ address }) => address, () => address.trim() || null),
    takes: {
      unit,
      format,
      roundingStep: carry(
        (it) => [it.format === 'sheet', it.step],
        ({ takes }) => takes.roundingStep,
        () => (format === 'sheet' || step.trim() === '' ? null : (plainNumber(step) ?? 0)),
      ),
      names: carry<Takes['names']>(
        namesShown,
        ({ takes }) => takes.names,
        () => Object.fromEntries(named.map(({ ours, theirs }) => [ours, theirs.trim()])),
      ),
      required: carry<Takes['required']>(
        namesShown,
        ({ takes }) => takes.required,
        () => named.filter(({ required }) => required).map(({ ours }) => ours),
      ),
    },
  }; // prettier-ignore
}

export function fromPlanner({ title, address = null, takes }: PlannerDto): PlannerNotes {
  const { unit, format, roundingStep, names, required } = takes ?? {};
  const stored: Takes = {
    unit: unit ?? 'mm',
    format: format ?? 'flat',
    roundingStep: roundingStep ?? null,
    names: names ?? {},
    required: required ?? [],
  };
  return {
    title,
    address: address ?? '',
    unit: stored.unit,
    format: stored.format,
    step: stored.roundingStep === null ? '' : String(stored.roundingStep),
    names: Object.entries(stored.names).map(([ours, theirs]) => ({
      ours,
      theirs,
      required: stored.required.includes(ours),
    })),
    record: { title, address, takes: stored },
  };
}
