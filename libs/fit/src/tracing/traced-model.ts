import { minus, type Quantity } from '#measure';
import type { PieceName } from '../messages/advice.ts';
import { CHECK_RULES } from '../checks/index.ts';
import type { CheckRule, TracedCheck } from '../checks/check.ts';
import { keyOf, type Choices } from '../design/choices.ts';
import { assembledDimensions, pieces as piecesOf } from './dimension-table.ts';
import { Layout } from '../engine/index.ts';
import type { GarmentModel } from '../model/garment-model.ts';
import { garmentModel } from './garment.ts';
import { INPUTS } from '../model/inputs.ts';
import type { Planned, PlannedPiece } from '../model/planned.ts';
import { solvedIn, solvedTerms, type SolvedTerm } from './solved-terms.ts';

/** All formulas of a garment for one set of choices, traced and laid out. */
export interface TracedModel {
  readonly garment: GarmentModel;
  /** Null for a check that the design has nothing for. */
  readonly checks: readonly { readonly rule: CheckRule; readonly traced: TracedCheck | null }[];
  readonly assembled: readonly Planned[];
  readonly pieces: readonly PlannedPiece[];
  /** Every dimension of the sheet with its place, in the order of the layout's outputs. */
  readonly placed: readonly Placed[];
  /** The quantities that are solved for. */
  readonly solved: ReadonlyMap<Quantity, SolvedTerm>;
  readonly layout: Layout;
}

/** A dimension and the piece that it stands on. */
export interface Placed {
  readonly piece: PieceName | 'assembled';
  readonly planned: Planned;
}

/** So many models are kept; the oldest makes room. */
const MOST = 64;
const BY_KEY = new Map<string, TracedModel>();
const BY_CHOICES = new WeakMap<Choices, TracedModel>();

/** The model for some choices. Sizes do not enter it: a child's constants are inputs. */
export function tracedModel(choices: Choices): TracedModel {
  const before = BY_CHOICES.get(choices);
  if (before) return before;
  const key = keyOf(choices);
  const model = BY_KEY.get(key) ?? traced(choices);
  if (!BY_KEY.has(key)) {
    const [oldest] = BY_KEY.keys();
    if (oldest !== undefined && BY_KEY.size >= MOST) BY_KEY.delete(oldest);
    BY_KEY.set(key, model);
  }
  BY_CHOICES.set(choices, model);
  return model;
}

function traced(choices: Choices): TracedModel {
  const garment = garmentModel(choices);
  const checks = CHECK_RULES.map((rule) => ({ rule, traced: tracedCheck(rule, garment) }));
  const assembled = assembledDimensions(garment);
  const pieces = piecesOf(garment);
  const placed: Placed[] = [
    ...assembled.map((each) => ({ piece: 'assembled' as const, planned: each })),
    ...pieces.flatMap(({ piece, dimensions }) => dimensions.map((each) => ({ piece, planned: each }))),
  ];
  const planned = placed.map((each) => each.planned);
  const present = checks.flatMap((each) => each.traced ?? []);
  const limiting = present.filter(({ rule }) => !rule.comfort(choices));
  return {
    garment,
    checks,
    assembled,
    pieces,
    placed,
    solved: solvedTerms(garment),
    layout: new Layout({
      inputs: Object.values(INPUTS),
      named: [...quantitiesIn(garment), ...planned.map(({ quantity }) => quantity), ...quantitiesIn(present)],
      outputs: planned.map(({ quantity }) => quantity),
      rounded: planned.map(({ rounded }) => rounded.quantity),
      solved: solvedIn(garment),
      sheet: planned.filter(({ derived }) => !derived).map(({ quantity }) => quantity),
      constraints: limiting.map(({ margin }) => margin),
    }),
  };
}

function tracedCheck(rule: CheckRule, garment: GarmentModel): TracedCheck | null {
  if (!rule.applies(garment.choices, NaN)) return null;
  const limits = rule.limits(garment);
  return { rule, ...limits, margin: minus(limits.have, limits.need) };
}

const KINDS: ReadonlySet<unknown> = new Set<Quantity['kind']>(['input', 'sum', 'applied', 'root']);

/** All quantities that stand in a record, at any depth. */
function quantitiesIn(record: object): Quantity[] {
  if ('kind' in record && KINDS.has(record.kind)) return [record as Quantity];
  return Object.values(record).flatMap((each: unknown) =>
    typeof each === 'object' && each !== null ? quantitiesIn(each) : [],
  );
}
