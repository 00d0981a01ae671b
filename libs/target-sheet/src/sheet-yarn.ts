import { text, type Reader } from '#advice-text';
import { SPARE, yarnUse, type Fabric, type FabricInput, type YarnUse } from '#fabric';
import type { PieceName } from '#fit';
import { polygonArea, type Params } from '#measure';
import type { Piece } from './sheet-parts.ts';

/** An amount with its standard uncertainty. */
interface Amount<Unit extends 'g' | 'm'> {
  readonly value: number;
  readonly u: number;
  readonly unit: Unit;
}

/** Yarn of a piece, all its copies together, or of all pieces. Area in m²; no length where the yarn's is not known by its weight. */
interface YarnAmount {
  readonly area: number;
  readonly mass: Amount<'g'>;
  readonly length?: Amount<'m'>;
}

/** What the pieces of a sheet take of yarn: those that are drawn, with nothing to spare. */
export interface SheetYarn extends YarnAmount {
  /** Where the weight of the fabric is from. */
  readonly from: string;
  readonly fromCode: string;
  readonly fromParams: Params;
  readonly pieces: readonly (YarnAmount & { readonly piece: PieceName })[];
  /** What is usual to have more. */
  readonly spare: { readonly code: string; readonly params: Params; readonly text: string };
}

/** The yarn of a sheet's pieces, mm; undefined where none is drawn. */
export function sheetYarn(
  pieces: readonly Piece[],
  input: FabricInput,
  fabric: Fabric,
  reader: Reader,
): SheetYarn | undefined {
  const drawn = pieces.flatMap(({ piece, outline, make }) =>
    outline ? [{ piece, area: make * polygonArea(outline) }] : [],
  );
  if (drawn.length === 0) return undefined;
  const whole = drawn.reduce((sum, { area }) => sum + area, 0);
  const use = yarnUse(whole, input, fabric);
  const grams = SPARE * use.massG.value;
  const spare = {
    code: 'yarn-spare',
    params: { grams, share: SPARE, allDrawn: drawn.length === pieces.length },
  } as const;
  return {
    ...amountOf(use),
    from: text('source', use.from, reader),
    fromCode: use.from.code,
    fromParams: use.from.params as Params,
    pieces: drawn.map(({ piece, area }) => ({ piece, ...amountOf(yarnUse(area, input, fabric)) })),
    spare: { ...spare, text: text('fabricNote', spare, reader) },
  };
}

const amountOf = ({ area, massG, lengthM }: YarnUse): YarnAmount => ({
  area,
  mass: { ...massG, unit: 'g' },
  ...(lengthM && { length: { ...lengthM, unit: 'm' } }),
});
