import { THICKNESS_RECORD, type RecordOf, type RecordSchema, type StoredRecord } from '#measure';
import { CRAFTS } from './fabric.ts';
import { FIBRES } from './fibre.ts';
import { STITCHES } from './stitch.ts';

/** How far it pulls, as (pulled − at rest)/at rest. */
export const STRETCH_RECORD = {
  across: { kind: 'number', min: 0, max: 3, description: 'In the direction of the stitches.', example: 0.2 },
  along: { kind: 'number', min: 0, max: 3, description: 'In the direction of the rows.', example: 0.1 },
} as const satisfies RecordSchema;

/** What washing and hanging do, as (after − before)/before; negative where it shrinks. */
export const GROWTH_RECORD = {
  across: { kind: 'number', min: -0.5, max: 0.5, description: 'In the direction of the stitches.', example: 0 },
  along: { kind: 'number', min: -0.5, max: 0.5, description: 'In the direction of the rows.', example: 0.02 },
} as const satisfies RecordSchema;

/** A yarn and its swatch, as far as the maker knows them. */
export const FABRIC_RECORD = {
  title: {
    kind: 'text',
    max: 120,
    optional: true,
    description: 'What the maker calls it.',
    example: 'Grey wool, hook 6',
  },
  craft: { kind: 'choice', of: CRAFTS },
  stitch: {
    kind: 'choice',
    of: STITCHES,
    optional: true,
    description: 'Default: stockinette when knitted, single crochet when crocheted.',
  },
  thickness: {
    kind: 'record',
    fields: THICKNESS_RECORD,
    optional: true,
    description: 'Of one layer: four layers under a small book, divided by four.',
  },
  wrapsPerInch: { kind: 'number', min: 0.5, max: 100, optional: true },
  metresPer100g: { kind: 'number', min: 5, max: 20_000, optional: true },
  fibre: { kind: 'choice', of: FIBRES, optional: true },
  weightCategory: { kind: 'whole', min: 0, max: 7, optional: true, description: '0 (lace) to 7 (jumbo).' },
  stretch: { kind: 'record', fields: STRETCH_RECORD, optional: true },
  ribStretch: { kind: 'number', min: 0, max: 3, optional: true, description: 'Of the rib across, as measured.' },
  growth: { kind: 'record', fields: GROWTH_RECORD, optional: true },
  gramsPerSquareMetre: { kind: 'number', min: 10, max: 5000, optional: true, description: 'g/m².' },
} as const satisfies RecordSchema;

/** A fabric as a maker gives it, and as it is stored. */
export type FabricRecord = RecordOf<typeof FABRIC_RECORD>;
export type StoredFabric = StoredRecord<typeof FABRIC_RECORD>;
