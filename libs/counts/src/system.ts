import type { CountableSheet, Identity, IdentityTerm } from './countable-sheet.ts';
import { addTimes, type Form, unknownAt } from './form.ts';
import { aboveRib, isSame } from './gauges.ts';
import { keyOf, type Node } from './node.ts';

/** A length that is known once other dimensions are counted: `plus` and so many times theirs. */
interface Rest {
  readonly plus: number;
  readonly times: ReadonlyMap<string, number>;
}

/** A whole number to choose: the count of a dimension, or the whole stitches next to a length that others leave. */
export type Unknown =
  { readonly kind: 'count'; readonly node: Node } | { readonly kind: 'rest'; readonly node: Node; readonly rest: Rest };

/** All counts of a sheet as sums of whole unknowns. */
export interface System {
  readonly nodes: ReadonlyMap<string, Node>;
  readonly unknowns: readonly Unknown[];
  readonly forms: ReadonlyMap<string, Form>;
}

/** Reads the identities of a sheet: what counts are to be chosen, and which follow from them. */
export function systemOf(sheet: CountableSheet, all: readonly Node[]): System {
  return new SystemReader(sheet, all).read();
}

class SystemReader {
  private readonly nodes: ReadonlyMap<string, Node>;
  private readonly identities = new Map<string, Identity>();
  private readonly unknowns: Unknown[] = [];
  private readonly forms = new Map<string, Form>();
  private readonly underWay = new Set<string>();

  constructor(
    private readonly sheet: CountableSheet,
    all: readonly Node[],
  ) {
    this.nodes = new Map(all.map((node) => [node.key, node]));
    for (const { piece, identities } of sheet.pieces)
      for (const identity of identities) this.identities.set(keyOf(piece, identity.name), identity);
  }

  read(): System {
    for (const node of this.nodes.values()) this.formOf(node);
    return { nodes: this.nodes, unknowns: this.unknowns, forms: this.forms };
  }

  private formOf(node: Node): Form {
    const known = this.forms.get(node.key);
    if (known) return known;
    this.underWay.add(node.key);
    const form = this.following(node) ?? this.withEqual(node) ?? this.chosen({ kind: 'count', node });
    this.underWay.delete(node.key);
    this.forms.set(node.key, form);
    return form;
  }

  private chosen(unknown: Unknown): Form {
    return unknownAt(this.unknowns.push(unknown) - 1);
  }

  /** One length of one name is one count, on whichever pieces it stands: joined edges agree. */
  private withEqual(node: Node): Form | null {
    for (const other of this.nodes.values()) {
      const form = this.forms.get(other.key);
      const { name } = other.dimension;
      if (form && name === node.dimension.name && other.unit === node.unit && other.pitch === node.pitch)
        if (isSame(other.length, node.length)) return form;
    }
    return null;
  }

  private following(node: Node): Form | null {
    const rib = this.ofRib(node);
    if (rib) return rib;
    const identity = this.identities.get(node.key);
    const terms = identity?.equals.map((term) => ({ ...term, node: this.nodes.get(placeOf(term, node)) }));
    if (!identity || !terms || terms.some((term) => !term.node || this.underWay.has(term.node.key))) return null;
    const sum = new Map<number, number>();
    const rest = new Map<string, number>();
    let plus = (identity.plus ?? 0) + node.dimension.allowance;
    addRest(rest, node.ribBelow, -1);
    for (const { times, node: of } of terms) {
      plus -= times * of!.dimension.allowance;
      if (of!.unit === node.unit && of!.pitch === node.pitch) {
        addTimes(sum, this.formOf(of!), times);
        addRest(rest, of!.ribBelow, times);
      } else {
        addRest(rest, of!.key, times);
      }
    }
    if (rest.size === 0 && Math.abs(plus) < 1e-6 * node.pitch) return sum;
    addTimes(sum, this.chosen({ kind: 'rest', node, rest: { plus, times: rest } }), 1);
    return sum;
  }

  /** The stitches above, where a rib is worked on them. */
  private ofRib(node: Node): Form | null {
    if (node.dimension.fabric !== 'rib' || node.unit !== 'across main') return null;
    const piece = this.sheet.pieces.find(({ piece }) => piece === node.piece);
    const above = piece && aboveRib(node.dimension, piece);
    const found = above && this.nodes.get(keyOf(node.piece, above.name));
    return found ? this.formOf(found) : null;
  }
}

const placeOf = ({ piece, name }: IdentityTerm, node: Node): string => keyOf(piece ?? node.piece, name);

function addRest(rest: Map<string, number>, key: string | null, times: number): void {
  if (key === null) return;
  const total = (rest.get(key) ?? 0) + times;
  if (Math.abs(total) < 1e-9) rest.delete(key);
  else rest.set(key, total);
}
