import type { Piece } from '#target-sheet';

/** What an identity may be off by its arithmetic, mm. */
const NEAR = 1e-6;

/**
 * Each dimension of a piece defines it, follows by one identity, or is derived; identities hold of the values as they are, name what is
 * on the sheet, and lead back to what defines. Values in mm.
 */
export function identityLaws(piece: Piece, all: readonly Piece[]): string[] {
  const { dimensions, identities } = piece;
  const kinds = dimensions.flatMap(({ name, defining, derived }) => {
    const given = identities.filter((each) => each.name === name).length;
    return Number(defining) + Number(derived ?? false) + given === 1
      ? []
      : [`${name} is not one of defining, given by an identity, and derived`];
  });
  return [...kinds, ...identities.flatMap((identity) => holds(piece, identity, all))];
}

type Identity = Piece['identities'][number];

const dimensionOf = (all: readonly Piece[], piece: string, name: string) =>
  all.find((each) => each.piece === piece)?.dimensions.find((each) => each.name === name);

function holds({ piece }: Piece, { name, equals, plus = 0 }: Identity, all: readonly Piece[]): string[] {
  const own = dimensionOf(all, piece, name);
  if (!own) return [`an identity gives ${name}, which it has not`];
  const terms = equals.map((term) => ({ term, found: dimensionOf(all, term.piece ?? piece, term.name) }));
  const lacking = terms
    .filter(({ found }) => !found)
    .map(({ term }) => `${name} follows from a ${term.name} that is not there`);
  if (lacking.length > 0) return lacking;
  const values = terms.map(({ found }) => found!.value);
  if (own.value === null || values.includes(null)) return [];
  const sum = terms.reduce((total, { term }, index) => total + term.times * values[index]!, plus);
  return Math.abs(sum - own.value) <= NEAR ? [] : [`${name} is ${own.value}, by its identity ${sum}`];
}
