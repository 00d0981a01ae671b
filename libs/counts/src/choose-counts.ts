import { componentsOf, type Component } from './components.ts';
import type { CountableSheet } from './countable-sheet.ts';
import { countsError } from './counts-errors.ts';
import { deviationCost, type Wanted } from './deviation.ts';
import { valueOf } from './form.ts';
import { meets } from './meets.ts';
import type { Node } from './node.ts';
import { cheapest, type Choice, type Consequence } from './search.ts';
import type { System, Unknown } from './system.ts';

/** Whole counts of every dimension, by key, and what they were chosen for. */
export interface ChosenCounts {
  readonly counts: ReadonlyMap<string, number>;
  /** As made, seam allowance included, in the sheet's unit. */
  lengthOf(key: string): number;
  wantedOf(node: Node): Wanted;
}

/**
 * Chooses the counts of a sheet: those that identities bind together at once, one group after another, so that a length that
 * rests on others (a sleeve's top on the rows of an armhole) rests on them as counted.
 *
 * @throws DomainError `counts-close-nowhere`
 */
export function chooseCounts(sheet: CountableSheet, system: System, symmetric: ReadonlySet<string>): ChosenCounts {
  const chooser = new Chooser(system, leadersOf(sheet, system));
  chooser.chooseAll(componentsOf(system, symmetric));
  return chooser;
}

interface Leader {
  readonly key: string;
  readonly slope: number;
}

/** What moves each dimension when it is rounded, as `follows` says: the chosen counts alone, so that nothing moves twice. */
function leadersOf(sheet: CountableSheet, { unknowns }: System): ReadonlyMap<string, readonly Leader[]> {
  const leaders = new Map<string, Leader[]>();
  const chosen = new Set(unknowns.flatMap((unknown) => (unknown.kind === 'count' ? [unknown.node.key] : [])));
  for (const { piece, dimensions } of sheet.pieces)
    for (const { name, follows } of dimensions)
      for (const { piece: place, name: other, slope } of follows ?? []) {
        const [key, led] = [`${piece}/${name}`, `${place}/${other}`];
        if (!chosen.has(key)) continue;
        const those = leaders.get(led);
        if (those) those.push({ key, slope });
        else leaders.set(led, [{ key, slope }]);
      }
  return leaders;
}

class Chooser implements ChosenCounts {
  readonly counts = new Map<string, number>();
  private readonly values: number[] = [];
  private readonly wanted = new Map<string, Wanted>();

  constructor(
    private readonly system: System,
    private readonly leaders: ReadonlyMap<string, readonly Leader[]>,
  ) {}

  lengthOf(key: string): number {
    const node = this.system.nodes.get(key);
    const count = this.counts.get(key);
    if (!node) return 0;
    return count === undefined ? node.length : count * node.pitch + this.below(node);
  }

  wantedOf(node: Node): Wanted {
    const known = this.wanted.get(node.key);
    if (known) return known;
    const shift = this.shiftOf(node);
    const wanted = { length: node.length + shift, low: node.low + shift, high: node.high + shift, pitch: node.pitch };
    this.wanted.set(node.key, wanted);
    return wanted;
  }

  /** Each component after those that it rests on; of two that rest on each other one goes first, by the sheet's lengths. */
  chooseAll(components: readonly Component[]): void {
    const home = new Map(
      components.flatMap((component) => component.nodes.map(({ key }) => [key, component] as const)),
    );
    const begun = new Set<Component>();
    const visit = (component: Component): void => {
      if (begun.has(component)) return;
      begun.add(component);
      for (const key of this.restsOn(component)) {
        const other = home.get(key);
        if (other) visit(other);
      }
      this.choose(component);
    };
    for (const component of components) visit(component);
    // What others take away from each other is nothing: the inset of a straight armhole.
    for (const [key, form] of this.system.forms) if (form.size === 0) this.counts.set(key, 0);
  }

  private restsOn({ nodes, unknowns }: Component): string[] {
    const rests = unknowns.flatMap((index) => {
      const unknown = this.system.unknowns[index]!;
      return unknown.kind === 'rest' ? [...unknown.rest.times.keys()] : [];
    });
    const leading = nodes.flatMap(({ key }) => (this.leaders.get(key) ?? []).map((leader) => leader.key));
    const ribs = nodes.flatMap(({ ribBelow }) => (ribBelow === null ? [] : [ribBelow]));
    return [...rests, ...ribs, ...leading];
  }

  private choose(component: Component): void {
    const { unknowns, nodes, onMiddle } = component;
    const choices = unknowns.map((index) => ({ candidates: this.candidates(index, component) }));
    const empty = choices.findIndex(({ candidates }) => candidates.length === 0);
    if (empty >= 0) throw closesNowhere(this.system.unknowns[unknowns[empty]!]!.node);
    const place = new Map(unknowns.map((index, at) => [index, at]));
    const own = new Set(unknowns.flatMap((index) => this.countedBy(index)));
    const consequences = [
      ...nodes.filter((node) => !own.has(node)).map((node) => this.consequenceOf(node, place)),
      ...onMiddle.flatMap((group) => this.alike(group, place)),
    ];
    const chosen = cheapest(choices as Choice[], consequences);
    if (chosen === null) throw closesNowhere(nodes[0]!);
    for (const [at, index] of unknowns.entries()) this.values[index] = chosen[at]!;
    for (const { key } of nodes) this.counts.set(key, Math.round(valueOf(this.system.forms.get(key)!, this.values)));
  }

  private candidates(index: number, { nodes }: Component): Choice['candidates'] {
    const unknown = this.system.unknowns[index]!;
    const involved = nodes.filter(({ key }) => this.system.forms.get(key)!.has(index));
    const alone = involved.filter(({ key }) => {
      const form = this.system.forms.get(key)!;
      return form.size === 1 && form.get(index) === 1;
    });
    const reach = 3 + Math.max(0, ...involved.flatMap(({ demands }) => demands.reduce((all, { of }) => all * of, 1)));
    const target = this.targetOf(index);
    const found = [];
    for (let value = Math.ceil(target - reach); value <= target + reach; value += 1)
      if (alone.every((node) => meets(value, node))) found.push({ value, cost: this.ownCost(unknown, value, target) });
    return found.toSorted((a, b) => a.cost - b.cost).slice(0, MOST_CANDIDATES);
  }

  /** A seam takes in a stitch: so much may be off where a length rests on others (assumed). */
  private ownCost({ kind, node }: Unknown, value: number, target: number): number {
    if (kind === 'rest') return (value - target) ** 2;
    return deviationCost(value * node.pitch + this.below(node), this.wantedOf(node));
  }

  /** The dimension whose count an unknown is. */
  private countedBy(index: number): Node[] {
    const unknown = this.system.unknowns[index]!;
    return unknown.kind === 'count' ? [unknown.node] : [];
  }

  private targetOf(index: number): number {
    const unknown = this.system.unknowns[index]!;
    const { node } = unknown;
    if (unknown.kind === 'count') return (this.wantedOf(node).length - this.below(node)) / node.pitch;
    let length = unknown.rest.plus;
    for (const [key, times] of unknown.rest.times) length += times * this.lengthOf(key);
    return length / node.pitch;
  }

  private consequenceOf(node: Node, place: ReadonlyMap<number, number>): Consequence {
    const { from, count } = this.counter(node, place);
    const wanted = this.wantedOf(node);
    const below = this.below(node);
    return {
      from,
      cost: (chosen) => {
        const whole = count(chosen);
        return meets(whole, node) ? deviationCost(whole * node.pitch + below, wanted) : Infinity;
      },
    };
  }

  private alike([first, ...others]: readonly Node[], place: ReadonlyMap<number, number>): Consequence[] {
    const one = this.counter(first!, place);
    return others.map((node) => {
      const other = this.counter(node, place);
      return {
        from: Math.max(one.from, other.from),
        cost: (chosen) => (Math.round(one.count(chosen) - other.count(chosen)) % 2 === 0 ? 0 : Infinity),
      };
    });
  }

  /** The count of a node by the choices of its component, and the last of them that it needs. */
  private counter({ key }: Node, place: ReadonlyMap<number, number>) {
    const terms = [...this.system.forms.get(key)!].map(([index, times]) => [place.get(index)!, times] as const);
    return {
      from: Math.max(...terms.map(([at]) => at)),
      count: (chosen: readonly number[]) => terms.reduce((sum, [at, times]) => sum + times * chosen[at]!, 0),
    };
  }

  private below({ ribBelow }: Node): number {
    return ribBelow === null ? 0 : this.lengthOf(ribBelow);
  }

  private shiftOf({ key }: Node): number {
    let shift = 0;
    for (const leader of this.leaders.get(key) ?? []) {
      const count = this.counts.get(leader.key);
      if (count !== undefined && leader.key !== key)
        shift += leader.slope * (this.lengthOf(leader.key) - this.system.nodes.get(leader.key)!.length);
    }
    return shift;
  }
}

/** Whole numbers that are tried for one unknown. */
const MOST_CANDIDATES = 7;

const closesNowhere = ({ piece, dimension: { name } }: Node) => countsError('counts-close-nowhere', { piece, name });
