/**
 * A planner that nobody here wrote sews a target sheet together, and rounds it, with nothing to go by but the published schema. It
 * imports nothing of the project.
 */

/** The seams of a sheet's text: both edges, and whether each names the other. Where a piece narrows above a rib of its own. */
export function sew(text) {
  const { pieces } = JSON.parse(text);
  const edgeOf = (piece, name) => pieces.find((each) => each.piece === piece)?.edges.find((each) => each.edge === name);
  const seams = pieces.flatMap(({ piece, edges }) =>
    edges.flatMap(({ edge, joins }) =>
      joins.map((join) => ({
        from: `${piece} ${edge}`,
        to: `${join.piece} ${join.edge}`,
        mirrored: join.mirrored === 1,
        named: (edgeOf(join.piece, join.edge)?.joins ?? []).some(
          (back) => back.piece === piece && back.edge === edge && back.mirrored === join.mirrored,
        ),
      })),
    ),
  );
  const free = pieces.flatMap(({ piece, edges }) =>
    edges.filter(({ joins }) => joins.length === 0).map(({ edge }) => `${piece} ${edge}`),
  );
  const narrowing = pieces.flatMap(({ piece, regions }) =>
    regions
      .filter(
        ({ stitches, width, startsAt }) => stitches === 'own' && startsAt !== undefined && startsAt < width - 1e-9,
      )
      .map(({ region }) => `${piece} ${region}`),
  );
  return { seams, free, narrowing };
}

/**
 * Every dimension of a sheet's text by `piece name`, rounded: those that define a piece as `roundedTo` says within their range, the
 * others by the identities, in turn until none is left.
 */
export function rounded(text, roundedTo) {
  const { pieces } = JSON.parse(text);
  const values = new Map();
  for (const { piece, dimensions } of pieces)
    for (const { name, defining, value, low, high } of dimensions)
      if (defining && value !== null) values.set(`${piece} ${name}`, roundedTo(`${piece} ${name}`, low, high));
  for (let left = -1; left !== 0;) {
    const before = values.size;
    left = 0;
    for (const { piece, identities } of pieces)
      for (const { name, equals, plus } of identities) {
        const key = `${piece} ${name}`;
        if (values.has(key)) continue;
        const terms = equals.map((term) => [term.times, values.get(`${term.piece ?? piece} ${term.name}`)]);
        if (terms.some(([, value]) => value === undefined)) left += 1;
        else
          values.set(
            key,
            terms.reduce((sum, [times, value]) => sum + times * value, plus ?? 0),
          );
      }
    if (values.size === before) break;
  }
  return values;
}
