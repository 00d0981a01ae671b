import { text, type Language, type Reader } from '#advice-text';
import type { Advice, Because, NoAdvice as NoAdviceMessage } from '#fit';
import type { Message } from '#measure';
import { RATIO_CHECKS } from './ratio-checks.ts';
import type {
  AssembledDimension,
  Check,
  Collision,
  NoAdvice,
  Piece,
  PieceDimension,
  SheetDesign,
  SheetNote,
  Term,
} from './sheet-parts.ts';

/** An advice with the text of each of its messages beside the code. */
export interface AdviceInWords {
  readonly design: SheetDesign;
  readonly assembled: readonly AssembledDimension[];
  readonly pieces: readonly Piece[];
  readonly checks: readonly Check[];
  readonly collisions: readonly Collision[];
  readonly cautions: readonly SheetNote[];
  readonly notes: readonly SheetNote[];
}

/** Adds the text of each message of an advice, in a reader's language and in the units of her tape. */
export function withText(advice: Advice, reader: Reader, language?: Language): AdviceInWords {
  const writer = new Writer(reader, language);
  return {
    design: writer.design(advice.design),
    assembled: advice.assembled.map((dimension) => writer.assembled(dimension)),
    pieces: advice.pieces.map((piece) => ({
      ...piece,
      dimensions: piece.dimensions.map((dimension) => writer.onPiece(dimension)),
    })),
    checks: advice.checks.map((check) => writer.check(check)),
    collisions: advice.collisions.map((collision) => writer.collision(collision)),
    cautions: advice.cautions.map((caution) => writer.note('caution', caution)),
    notes: advice.notes.map((note) => writer.note('note', note)),
  };
}

type Kind = Parameters<typeof text>[0];

class Writer {
  readonly #reader: Reader;
  readonly #language: Language | undefined;
  /** Pieces share most of their numbers, and the reasons of each. */
  readonly #terms = new Map<readonly Because[], readonly Term[]>();

  constructor(reader: Reader, language: Language | undefined) {
    this.#reader = reader;
    this.#language = language;
  }

  /** Written out: spreading so many objects of several shapes took longer than their texts. */
  assembled(dimension: Advice['assembled'][number]): AssembledDimension {
    const { name, value, u, low, high, follows, because, noAdvice } = dimension;
    if (noAdvice !== undefined) return { name, value, because: [], noAdvice: this.#noAdvice(noAdvice) };
    return { name, value, u: u!, low: low!, high: high!, follows: follows!, because: this.#because(because) };
  }

  onPiece(dimension: Advice['pieces'][number]['dimensions'][number]): PieceDimension {
    const {
      name,
      axis,
      fabric,
      defining,
      derived,
      value,
      allowance,
      asMade,
      u,
      low,
      high,
      follows,
      because,
      noAdvice,
    } = dimension;
    const kind = derived ? { defining, derived } : { defining };
    if (noAdvice !== undefined) {
      const reason = this.#noAdvice(noAdvice);
      return { name, axis, fabric, ...kind, value, allowance, asMade, because: [], noAdvice: reason };
    }
    const terms = this.#because(because);
    return {
      name,
      axis,
      fabric,
      ...kind,
      value,
      allowance,
      asMade,
      u: u!,
      low: low!,
      high: high!,
      follows: follows!,
      because: terms,
    };
  }

  check({ remedies, ...check }: Advice['checks'][number]): Check {
    return {
      ...check,
      unit: RATIO_CHECKS.includes(check.check) ? '1' : 'mm',
      advice: this.#text('check', check),
      ...(remedies && {
        remedies: remedies.map((remedy) => ({
          code: remedy.code,
          params: remedy.params,
          text: this.#text('remedy', remedy),
          change: remedy.change,
        })),
      }),
    };
  }

  collision({ wishes: [one, other], piece, dimension }: Advice['collisions'][number]): Collision {
    const wish = (code: typeof one) => ({ code, params: {}, text: this.#text('wish', { code, params: {} }) });
    return { wishes: [wish(one), wish(other)], piece, dimension };
  }

  note(kind: 'note' | 'caution', message: Advice['notes' | 'cautions'][number]): SheetNote {
    const { code, params, source } = message;
    return {
      code,
      params,
      text: this.#text(kind, message),
      ...(source && { source: this.#text('source', source) }),
    };
  }

  design({ ease: { lies, ...ease }, ...design }: Advice['design']): SheetDesign {
    const inWords =
      lies === null ? { lies } : { lies: this.#text('ease', lies), liesCode: lies.code, liesParams: lies.params };
    return { ...design, ease: { ...ease, ...inWords } };
  }

  #because(because: readonly Because[]): readonly Term[] {
    const before = this.#terms.get(because);
    if (before) return before;
    const terms = because.map((each) => this.#term(each));
    this.#terms.set(because, terms);
    return terms;
  }

  #term(because: Because): Term {
    const { code, params, value, u, from } = because;
    return {
      code,
      params,
      term: this.#text('term', because),
      value,
      u,
      from: this.#text('source', from),
      fromCode: from.code,
      fromParams: from.params,
    };
  }

  #noAdvice(message: NoAdviceMessage): NoAdvice {
    const { code, params, needs } = message;
    return { code, params, needs, reason: this.#text('noAdvice', message) };
  }

  #text(kind: Kind, message: Message<string, unknown>): string {
    return text(kind, message as Parameters<typeof text>[1], this.#reader, this.#language);
  }
}
