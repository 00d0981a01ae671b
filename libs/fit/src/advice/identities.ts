import type { Identity, PieceName } from '../messages/advice.ts';
import type { TracedModel } from '../tracing/traced-model.ts';
import type { ValueOf } from '../model/path.ts';

/** What an identity may be off by its arithmetic, mm. */
const NEAR = 1e-6;

/**
 * The identities of a piece. One that does not hold is none, and its dimension defines itself: two pieces that were made need not fit each
 * other.
 */
export function identitiesOf(piece: PieceName, { pieces, byPlace }: TracedModel, v: ValueOf): Identity[] {
  const { dimensions } = pieces.find((each) => each.piece === piece)!;
  return dimensions.flatMap(({ name, quantity, equals }) => {
    if (equals === null) return [];
    const terms = equals.map((term) => ({ term, quantity: byPlace.get(`${term.piece ?? piece}/${term.name}`) }));
    if (terms.some((each) => each.quantity === undefined)) return [];
    const sum = terms.reduce((total, each) => total + each.term.times * v(each.quantity!), 0);
    return Math.abs(sum - v(quantity)) > NEAR ? [] : [{ name, equals }];
  });
}
