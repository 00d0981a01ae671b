import { describe, expect, it } from 'vitest';
import { adviceOn } from '../../../../tests/support/fit-samples.ts';
import type { Advice, EdgeName, PieceName } from '../messages/advice.ts';

const joinsOf = (advice: Advice, piece: PieceName, edge: EdgeName) =>
  advice.pieces.find((each) => each.piece === piece)!.edges.find((each) => each.edge === edge)!.joins;
const opened = (design: object) => adviceOn({ design: { opening: { at: 'shoulder', lengthMm: 50 }, ...design } });

describe('the seams of a garment', () => {
  it('open at the wearer’s left shoulder, on the left of her back and the right of her front', () => {
    const advice = opened({});
    expect(joinsOf(advice, 'back', 'left-shoulder')).toEqual([{ piece: 'front', edge: 'right-shoulder', open: 50 }]);
    expect(joinsOf(advice, 'front', 'right-shoulder')).toEqual([{ piece: 'back', edge: 'left-shoulder', open: 50 }]);
    expect(joinsOf(advice, 'back', 'right-shoulder')).toEqual([{ piece: 'front', edge: 'left-shoulder' }]);
  });

  it('of a raglan open in front', () => {
    const advice = opened({ construction: 'raglan' });
    expect(joinsOf(advice, 'front', 'right-raglan')).toEqual([{ piece: 'sleeve', edge: 'front-raglan', open: 50 }]);
    expect(joinsOf(advice, 'back', 'left-raglan')).toEqual([{ piece: 'sleeve', edge: 'back-raglan' }]);
  });

  it('of a vest are its bands’, from the underarm up the back and down the front', () => {
    const advice = adviceOn({ design: { silhouette: 'vest', construction: 'set-in' } });
    expect(joinsOf(advice, 'armhole-band', 'picked-up-edge').filter(({ mirrored }) => !mirrored)).toEqual([
      { piece: 'back', edge: 'left-underarm' },
      { piece: 'back', edge: 'left-armhole' },
      { piece: 'front', edge: 'right-armhole' },
      { piece: 'front', edge: 'right-underarm' },
    ]);
  });

  it('of a cardigan name both fronts and both bands', () => {
    const advice = adviceOn({ design: { silhouette: 'cardigan' } });
    expect(joinsOf(advice, 'front-band', 'picked-up-edge')).toEqual([
      { piece: 'left-front', edge: 'front-edge' },
      { piece: 'right-front', edge: 'front-edge', mirrored: 1 },
    ]);
    expect(joinsOf(advice, 'sleeve', 'front-armhole')).toEqual([
      { piece: 'left-front', edge: 'right-armhole' },
      { piece: 'right-front', edge: 'left-armhole', mirrored: 1 },
    ]);
  });
});
