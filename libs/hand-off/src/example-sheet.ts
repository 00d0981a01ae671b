import type { TargetSheet } from '#target-sheet';
import type { PieceDimension } from './sheet-dimension.ts';

const onPiece = (name: PieceDimension['name'], value: number, more: Partial<PieceDimension> = {}): PieceDimension => ({
  name,
  value,
  low: value - 10,
  high: value + 10,
  u: 5,
  axis: 'across',
  fabric: 'main',
  defining: true,
  allowance: 0,
  asMade: value,
  because: [],
  ...more,
});

const width = (): PieceDimension =>
  onPiece('width', 510.9, {
    low: 504.4,
    high: 523.4,
    follows: [
      { piece: 'assembled', name: 'chest-width', slope: 1 },
      { piece: 'assembled', name: 'sleeve-length', slope: -0.5 },
      ...(['back', 'front'] as const).flatMap((piece) =>
        (['width', 'hem-width'] as const).map((name) => ({ piece, name, slope: 1 })),
      ),
      { piece: 'sleeve', name: 'sleeve-length', slope: -0.5 },
    ],
  });

/** A small sheet for this folder's specs: a drop shoulder in mm, with growth along (2 %) and a neck nobody measured for. */
export const exampleSheet: TargetSheet = {
  format: 'easewright/target-sheet',
  version: '1.0',
  id: '01900000-0000-7000-8000-000000000001',
  createdAt: '2026-01-01T12:00:00Z',
  title: 'Harbour, "long"',
  unit: 'mm',
  craft: 'knit',
  stitch: null,
  rulesVersion: '1',
  design: {
    silhouette: 'pullover',
    construction: 'drop-shoulder',
    length: 'regular',
    neckline: 'crew',
    basis: 'body',
    opening: { at: 'none', length: 0 },
    ease: {
      category: 'classic',
      place: 0.5,
      chosen: 75,
      tableTerms: 75,
      lies: 'classic',
      flat: 87,
      room: 63,
      chanceOfBand: 0.83,
    },
  },
  fabric: { thickness: 6, u: 0.3, from: 'measured', stretch: null, growth: { across: 0, along: 0.02 } },
  assembled: [
    {
      name: 'chest-width',
      value: 513.5,
      u: 7.5,
      low: 507,
      high: 526,
      follows: width().follows!,
      because: [],
    },
    { name: 'sleeve-length', value: 487.5, low: 477.5, high: 497.5, because: [] },
    {
      name: 'neck-width',
      value: null,
      because: [],
      noAdvice: { needs: ['neck-base-girth'], reason: 'No neck was measured.' },
    },
  ],
  pieces: [
    {
      piece: 'back',
      make: 1,
      mirrored: 0,
      workedFrom: 'hem',
      edges: [],
      regions: [],
      identities: [],
      dimensions: [width(), onPiece('hem-width', 510.9)],
    },
    {
      piece: 'front',
      make: 1,
      mirrored: 0,
      workedFrom: 'hem',
      edges: [],
      regions: [],
      identities: [],
      dimensions: [width(), onPiece('hem-width', 510.9)],
    },
    {
      piece: 'sleeve',
      make: 2,
      mirrored: 1,
      workedFrom: 'cuff',
      edges: [],
      regions: [],
      identities: [],
      dimensions: [
        onPiece('sleeve-length', 487.5, { axis: 'along', allowance: 12.3, asMade: 490 }),
        onPiece('cuff-width', 188.1, { low: 187.9, high: 188.4 }),
      ],
    },
  ],
  checks: [],
  collisions: [],
  cautions: [],
  notes: [],
};
