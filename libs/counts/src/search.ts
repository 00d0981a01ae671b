/** A whole number to choose: the numbers that may do, best first, and what each costs by itself. */
export interface Choice {
  readonly candidates: readonly { readonly value: number; readonly cost: number }[];
}

/** What is known once the choices up to a place are made: its cost, Infinity where it cannot be. */
export interface Consequence {
  readonly from: number;
  cost(chosen: readonly number[]): number;
}

/** Choices that are tried at most, so that no input takes long; what is found by then is good, if not the best. */
const MOST_TRIED = 20_000;

/**
 * The choices that cost least together, by branch and bound; null where none is possible. A consequence is worked out as soon
 * as the choices it rests on are made: those up to its `from`.
 */
export function cheapest(choices: readonly Choice[], consequences: readonly Consequence[]): number[] | null {
  const after = choices.map((_, at) => consequences.filter(({ from }) => from === at));
  const least = leastCosts(choices);
  const chosen: number[] = choices.map(() => 0);
  let best: number[] | null = null;
  let bestCost = Infinity;
  let tried = 0;
  const choose = (at: number, before: number): void => {
    if (at === choices.length) {
      if (before < bestCost) [best, bestCost] = [[...chosen], before];
      return;
    }
    for (const { value, cost } of choices[at]!.candidates) {
      if (before + cost + least[at + 1]! >= bestCost) break;
      if (best !== null && tried > MOST_TRIED) return;
      tried += 1;
      chosen[at] = value;
      let total = before + cost;
      for (const consequence of after[at]!) total += consequence.cost(chosen);
      if (total + least[at + 1]! < bestCost) choose(at + 1, total);
    }
  };
  choose(0, 0);
  return best;
}

/** What the choices from each place on cost at least. */
function leastCosts(choices: readonly Choice[]): number[] {
  const least = new Array<number>(choices.length + 1).fill(0);
  for (let at = choices.length - 1; at >= 0; at -= 1)
    least[at] = least[at + 1]! + (choices[at]!.candidates[0]?.cost ?? Infinity);
  return least;
}
