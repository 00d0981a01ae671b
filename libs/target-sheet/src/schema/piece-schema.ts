import { EDGE_KINDS, EDGES, PIECE_DIMENSION_NAMES, PIECES, REGION_FABRICS, REGION_STITCHES, REGIONS } from '#fit';
import { listOf, number, objectOf, oneOf, type JsonSchema } from './json-schema.ts';

export const pointSchema: JsonSchema = {
  type: 'array',
  description: '[x, y] in the sheet’s unit.',
  items: number('x to the right, or y up.'),
  minItems: 2,
  maxItems: 2,
};

export const joinSchema = objectOf(
  'What an edge is joined to; it is said on both pieces.',
  {
    piece: oneOf('The piece it is joined to.', PIECES),
    edge: oneOf('The edge of that piece.', EDGES),
    mirrored: {
      type: 'integer',
      description: 'Of a mirrored copy: of the piece joined to, or of this one. Absent for the pieces as drawn.',
      const: 1,
    },
    open: number('How much of the seam stays open, from the neck on, in the sheet’s unit.', { minimum: 0 }),
    ease: number(
      'By how much this edge is longer, there, than what it is joined to (negative: shorter), in the sheet’s unit: to be eased in or picked up so. Absent where they are equally long.',
    ),
  },
  ['mirrored', 'open', 'ease'],
);

const place = (description: string): JsonSchema => ({ type: 'integer', description, minimum: 0 });

export const edgeSchema = objectOf('An edge of a piece.', {
  edge: oneOf(
    'Its name. Left and right are the viewer’s, who sees the piece from outside; the sleeve drawn is the wearer’s left, cuff down, its front on the left. underarm: what is bound off, or lies level, at the underarm; top: the neck end of a raglan sleeve; picked-up-edge, free-edge and ends are a band’s.',
    EDGES,
  ),
  from: place('Where it begins: a place in outline, counted from 0.'),
  to: place('Where it ends; the next edge begins there.'),
  kind: oneOf('straight: level or upright; slope: slanted; curve: neither.', EDGE_KINDS),
  length: number(
    'As sewn, in the sheet’s unit. Of a round neck it is that of the curve, which outline draws in chords, up to 0.5 % shorter; what a sleeve steps out above its rib is no part of its seam.',
    { minimum: 0 },
  ),
  joins: listOf(
    'What it is joined to; empty for a free edge. An edge joined to several is as long as their sum, with the ease, in the order given; those of a mirrored copy are its own.',
    { $ref: '#/$defs/join' },
  ),
});

export const regionSchema = objectOf(
  'A part of a piece in one fabric. Work no narrower than a region begins.',
  {
    region: oneOf('Which part.', REGIONS),
    fabric: oneOf('Which fabric.', REGION_FABRICS),
    from: number('Where it begins, from the edge where work begins, in the sheet’s unit.', { minimum: 0 }),
    to: number('Where it ends, and the next begins, in the sheet’s unit.', { minimum: 0 }),
    stitches: oneOf(
      'as-above: worked on the stitches with which the region above begins, as a hem’s rib; own: on as many as its width takes in its fabric, as a cuff.',
      REGION_STITCHES,
    ),
    width: number('As worn, where it begins, in the sheet’s unit.', { minimum: 0 }),
    startsAt: number('The width with which the region above begins, in the sheet’s unit; absent on the last.', {
      minimum: 0,
    }),
  },
  ['startsAt'],
);

export const identitySchema = objectOf(
  'A dimension that others give: the sum of times × value, and plus.',
  {
    name: oneOf('The dimension, of this piece.', PIECE_DIMENSION_NAMES),
    equals: {
      ...listOf(
        'What adds up to it.',
        objectOf(
          'Some times a dimension.',
          {
            piece: oneOf('The piece it stands on; absent for this one.', PIECES),
            name: oneOf('Its name there.', PIECE_DIMENSION_NAMES),
            times: number('How many times.'),
          },
          ['piece'],
        ),
      ),
      minItems: 1,
    },
    plus: number('A length that is added, in the sheet’s unit; absent for none.'),
  },
  ['plus'],
);

const count = (description: string, minimum: number): JsonSchema => ({ type: 'integer', description, minimum });

export const pieceSchema = objectOf(
  'A piece to make.',
  {
    piece: oneOf('Which piece.', PIECES),
    make: count('How many in all, mirrored ones included.', 1),
    mirrored: count('How many of them are mirror images of the outline.', 0),
    workedFrom: oneOf('Which edge is the lower edge of the outline.', ['hem', 'cuff', 'edge']),
    outline: {
      type: 'array',
      description:
        'The shape as worn, without seam allowance: corners in order, counter-clockwise, y up, [0, 0] at the left end of the lower edge (x may go below 0 above it); the last joins the first. It does not cross itself. Absent where a value it needs has no advice.',
      items: { $ref: '#/$defs/point' },
      minItems: 3,
    },
    edges: listOf(
      'Its edges, counter-clockwise from the outline’s first point, once round it; empty without an outline.',
      { $ref: '#/$defs/edge' },
    ),
    regions: listOf('Its regions from where work begins to the end; empty without an outline.', {
      $ref: '#/$defs/region',
    }),
    dimensions: listOf('Its named dimensions.', { $ref: '#/$defs/pieceDimension' }),
    identities: listOf(
      'How the dimensions that define nothing follow. Round those that are defining, compute the others by these, and the piece closes.',
      { $ref: '#/$defs/identity' },
    ),
  },
  ['outline'],
);
