import { asMade as asMadeOf } from '#fabric';
import type { Quantity } from '#measure';
import type {
  AssembledDimension,
  Because,
  DimensionName,
  Follows,
  NoAdvice,
  Piece,
  PieceDimension,
  PieceName,
} from '../messages/advice.ts';
import { because } from '../evaluation/because.ts';
import type { Computed } from '../evaluation/compute.ts';
import { NONE } from '../messages/none.ts';
import type { MissingMeasures } from '../evaluation/missing.ts';
import type { Planned, PlannedOnPiece } from '../model/planned.ts';
import { drawPieces } from '../outline/draw-pieces.ts';
import { identitiesOf } from './identities.ts';
import type { SheetNumber, SheetNumbers } from '../evaluation/sheet-numbers.ts';

/** A dimension that has a value. */
type Given = SheetNumber & { readonly because: readonly Because[] };

/** What moves with a dimension, itself left out. */
const others = ({ follows }: SheetNumber, piece: Follows['piece'], name: DimensionName): Follows[] =>
  follows.filter((each) => each.piece !== piece || each.name !== name);

/** A number that comes out less than nothing, such as a shoulder beside a neck wider than the back. */
const NOTHING_LEFT: NoAdvice = { code: 'nothing-left', params: NONE, needs: [] };

/** Writes the dimensions of a sheet. */
export class DimensionWriter {
  readonly #computed: Computed;
  readonly #numbers: SheetNumbers;
  readonly #missing: () => MissingMeasures;
  readonly #noSleeve: NoAdvice | null;
  /** Pieces share most of their numbers; each is written once and stands in all of them. */
  readonly #written = new Map<Quantity, Given | NoAdvice>();

  /** `noSleeve`: why the sleeve has no advice, where no cap joins the armhole. */
  constructor(computed: Computed, numbers: SheetNumbers, missing: () => MissingMeasures, noSleeve: NoAdvice | null) {
    this.#computed = computed;
    this.#numbers = numbers;
    this.#missing = missing;
    this.#noSleeve = noSleeve;
  }

  assembled(): AssembledDimension[] {
    const { sleeve } = this.#computed.model.garment;
    const ofSleeve = new Set(
      sleeve && [sleeve.length, sleeve.underarmSeam, sleeve.topFlat, sleeve.cuffFlat, sleeve.reached],
    );
    return this.#computed.model.assembled.map((planned) => this.#whole(planned, ofSleeve.has(planned.quantity)));
  }

  pieces(): Piece[] {
    const { model, evaluation } = this.#computed;
    const v = evaluation.value;
    const shapes = drawPieces(model, v, this.#noSleeve === null);
    return model.pieces.map(({ piece, make, mirrored, workedFrom, dimensions }) => {
      const none = piece === 'sleeve' && this.#noSleeve !== null;
      const shape = shapes.get(piece);
      const identities = identitiesOf(piece, model, v);
      const given = new Set(identities.map(({ name }) => name));
      return {
        piece,
        make,
        mirrored,
        workedFrom,
        ...(shape && { outline: shape.outline }),
        edges: shape?.edges ?? [],
        regions: shape?.regions ?? [],
        dimensions: dimensions.map((planned) => this.#onPiece(piece, planned, none, given)),
        identities,
      };
    });
  }

  #whole(planned: Planned, ofSleeve: boolean): AssembledDimension {
    const { name } = planned;
    const given = this.#given(planned, ofSleeve);
    if ('needs' in given) return { name, value: null, because: [], noAdvice: given };
    const { value, u, low, high, because } = given;
    return { name, value, u, low, high, follows: others(given, 'assembled', name), because };
  }

  #onPiece(
    piece: PieceName,
    planned: PlannedOnPiece,
    ofSleeve: boolean,
    followers: ReadonlySet<DimensionName>,
  ): PieceDimension {
    const { name, axis, fabric, joinedEnds } = planned;
    const kind = planned.derived ? ({ defining: false, derived: true } as const) : { defining: !followers.has(name) };
    const { request } = this.#computed;
    const allowance = joinedEnds * request.design.seamAllowanceMm;
    const given = this.#given(planned, ofSleeve);
    if ('needs' in given)
      return { name, axis, fabric, ...kind, value: null, allowance, asMade: null, because: [], noAdvice: given };
    const { value, u, low, high, because } = given;
    const follows = others(given, piece, name);
    const asMade = asMadeOf(value, allowance, request.fabric.growth?.[axis] ?? 0);
    return { name, axis, fabric, ...kind, value, allowance, asMade, u, low, high, follows, because };
  }

  #given(planned: Planned, ofSleeve: boolean): Given | NoAdvice {
    if (ofSleeve && this.#noSleeve) return this.#noSleeve;
    const before = this.#written.get(planned.quantity);
    if (before) return before;
    const given = this.#write(planned);
    this.#written.set(planned.quantity, given);
    return given;
  }

  #write(planned: Planned): Given | NoAdvice {
    const { quantity } = planned;
    const number = this.#numbers.of(planned);
    if (number) {
      const { value, u, low, high, follows } = number;
      return { value, u, low, high, follows, because: because(quantity, u, this.#computed) };
    }
    return Number.isNaN(this.#computed.evaluation.value(quantity)) ? this.#missing().reasonFor(quantity) : NOTHING_LEFT;
  }
}
