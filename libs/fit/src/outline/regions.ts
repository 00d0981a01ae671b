import type { PieceName, Region } from '../messages/advice.ts';
import type { GarmentModel } from '../model/garment-model.ts';
import type { Path, ValueOf } from '../model/path.ts';

/** The regions of a piece that is drawn, from the edge where work begins. A hem's rib is worked on the body's stitches, a cuff on its own. */
export function regionsOf(piece: PieceName, outline: Path, v: ValueOf, { body, sleeve }: GarmentModel): Region[] {
  const height = Math.max(...outline.map(([, y]) => y));
  const begins = widthAt(outline, 0);
  if (piece.endsWith('-band'))
    return [{ region: 'rib', fabric: 'rib', from: 0, to: height, stitches: 'own', width: begins }];
  const ofSleeve = piece === 'sleeve';
  const region = ofSleeve ? 'sleeve' : 'body';
  const rib = Math.min(v(body.rib), height);
  const main = (from: number, width: number): Region => ({
    region,
    fabric: 'main',
    from,
    to: height,
    stitches: 'own',
    width,
  });
  if (!(rib > 0)) return [main(0, begins)];
  const ofRib = { region: 'rib', fabric: 'rib', from: 0, to: rib, width: begins } as const;
  if (!(height > rib)) return [{ ...ofRib, stitches: 'own' }];
  const above = ofSleeve && rib < v(sleeve!.underarmSeam) ? v(sleeve!.aboveRib) : widthAt(outline, rib);
  return [{ ...ofRib, stitches: ofSleeve ? 'own' : 'as-above', startsAt: above }, main(rib, above)];
}

/** From the leftmost to the rightmost place of an outline at a height. */
function widthAt(outline: Path, height: number): number {
  const places = outline.flatMap(([x1, y1], index) => {
    const [x2, y2] = outline[(index + 1) % outline.length]!;
    if (y1 === height) return [x1];
    return (y1 - height) * (y2 - height) < 0 ? [x1 + ((height - y1) / (y2 - y1)) * (x2 - x1)] : [];
  });
  return Math.max(...places) - Math.min(...places);
}
