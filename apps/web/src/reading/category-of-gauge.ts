import { YARN_WEIGHTS } from '#fabric';
import type { YarnNotes } from '../notebook/notebook.ts';
import { plainNumber } from './read.ts';

/** The weight category whose published gauge comes nearest; the maker's own category goes before it. */
export function categoryOfGauge({ craft, stitches }: Pick<YarnNotes, 'craft' | 'stitches'>): number | null {
  const gauge = plainNumber(stitches);
  if (gauge === null) return null;
  const away = ({ from, to }: { readonly from: number | null; readonly to: number | null }): number =>
    Math.max((from ?? 0) - gauge, gauge - (to ?? Infinity), 0);
  const bands = YARN_WEIGHTS.weights
    .filter(({ crochet }) => craft === 'knit' || crochet.stitch === 'single crochet')
    .map((weight) => ({
      category: weight.category,
      away: away(craft === 'knit' ? weight.stockinette : weight.crochet),
    }));
  return bands.reduce((best, band) => (band.away < best.away ? band : best)).category;
}
