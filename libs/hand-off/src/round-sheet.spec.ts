import { describe, expect, it } from 'vitest';
import { exampleSheet } from './example-sheet.ts';
import { roundSheet } from './round-sheet.ts';
import { placedDimensions, type PieceDimension } from './sheet-dimension.ts';

type By = 'value' | 'as-made';

/** Rounds the named dimensions of the example sheet; the answer by `place/name`. */
function rounded(step: number, names: readonly string[], by: By = 'value') {
  const taken = placedDimensions(exampleSheet)
    .filter(({ place, dimension }) => names.includes(`${place}/${dimension.name}`))
    .map((each) => ({ ...each, by }));
  const { sheet, outside } = roundSheet(exampleSheet, step, taken);
  const all = new Map(placedDimensions(sheet).map(({ place, dimension }) => [`${place}/${dimension.name}`, dimension]));
  return {
    value: (name: string) => all.get(name)?.value,
    asMade: (name: string) => (all.get(name) as PieceDimension).asMade,
    limits: (name: string) => [all.get(name)?.low, all.get(name)?.high],
    outside: outside.map(({ place, dimension }) => `${place}/${dimension.name}`),
  };
}

describe('roundSheet', () => {
  it('moves a sleeve by half of what the width was rounded, before the sleeve is rounded', () => {
    // Width 510.9 → 510 in steps of 10 (504.4…523.4): −0.9. Sleeve 487.5 − 0.5 × −0.9 = 487.95 → 490.
    // In steps of 5: width 510 again, sleeve 487.95 → 490, where alone it stands half-way: 487.5 → 490 as well.
    // In steps of 7: width 511 (+0.1), sleeve 487.45 → 490 (70 × 7), limits 477.45…497.45.
    const sheet = rounded(7, ['back/width', 'sleeve/sleeve-length']);
    expect(sheet.value('back/width')).toBe(511);
    expect(sheet.value('sleeve/sleeve-length')).toBe(490);
    expect(sheet.limits('sleeve/sleeve-length')).toEqual([expect.closeTo(477.45, 9), expect.closeTo(497.45, 9)]);
  });

  it('the follower’s move can decide which way it is rounded', () => {
    // Step 25: width 510.9 → 500 is under low 504.4, 525 over high 523.4: none within, nearest 500 (−10.9), said.
    // Sleeve 487.5 + 5.45 = 492.95 (482.95…502.95) → 500. Alone: 487.5 lies half-way, up to 500, over its high of 497.5; 475 is under.
    expect(rounded(25, ['back/width', 'sleeve/sleeve-length'])).toMatchObject({ outside: ['back/width'] });
    expect(rounded(25, ['back/width', 'sleeve/sleeve-length']).value('sleeve/sleeve-length')).toBe(500);
    expect(rounded(25, ['sleeve/sleeve-length']).outside).toEqual(['sleeve/sleeve-length']);
  });

  it('back and front are one width: the sleeve moves once', () => {
    const names = ['back/width', 'front/width', 'sleeve/sleeve-length'];
    expect(rounded(7, names).limits('sleeve/sleeve-length')[0]).toBeCloseTo(477.45, 9);
  });

  it('a width decides once, on the piece where the planner takes both', () => {
    // Back 510.9 → 511: +0.1. Chest 513.5 goes along to 513.6, then → 511 (73 × 7), which moves nothing more.
    const both = rounded(7, ['assembled/chest-width', 'back/width', 'sleeve/sleeve-length']);
    expect(both.value('assembled/chest-width')).toBe(511);
    expect(both.limits('assembled/chest-width')[0]).toBeCloseTo(507.1, 9);
    expect(both.limits('sleeve/sleeve-length')[0]).toBeCloseTo(477.45, 9);
    // Alone, the chest's −2.5 moves the sleeve by +1.25.
    const assembled = rounded(7, ['assembled/chest-width', 'sleeve/sleeve-length']);
    expect(assembled.limits('sleeve/sleeve-length')[0]).toBeCloseTo(478.75, 9);
  });

  it('one length has one rounding, assembled and on its piece', () => {
    const sheet = rounded(3, ['back/width', 'assembled/sleeve-length', 'sleeve/sleeve-length']);
    // Width → 510 (−0.9), sleeve 487.95 → 489 (163 × 3).
    expect([sheet.value('assembled/sleeve-length'), sheet.value('sleeve/sleeve-length')]).toEqual([489, 489]);
  });

  it('what the planner does not take stays as it is and moves nothing', () => {
    const sheet = rounded(10, ['sleeve/sleeve-length']);
    expect(sheet.value('back/width')).toBe(510.9);
    expect(sheet.value('sleeve/sleeve-length')).toBe(490);
  });

  it('says what no multiple can keep within its limits', () => {
    // Cuff 188.1, 187.9…188.4, steps of 5: 190.
    const sheet = rounded(5, ['sleeve/cuff-width', 'back/width']);
    expect(sheet.outside).toEqual(['sleeve/cuff-width']);
    expect(sheet.value('sleeve/cuff-width')).toBe(190);
  });

  it('rounds the length off the needles for a planner that works from it', () => {
    // As made 490 = (487.5 + 12.3)/1.02. In steps of 8: 488 (−2); worn −2 × 1.02 = −2.04 → 485.46.
    const sheet = rounded(8, ['sleeve/sleeve-length'], 'as-made');
    expect(sheet.asMade('sleeve/sleeve-length')).toBe(488);
    expect(sheet.value('sleeve/sleeve-length')).toBeCloseTo(485.46, 6);
  });

  it('takes the length off the needles along when the worn one is rounded', () => {
    // Worn 487.5 → 490 (+2.5): as made 490 + 2.5/1.02 = 492.45 → 490 in steps of 10.
    expect(rounded(10, ['sleeve/sleeve-length']).asMade('sleeve/sleeve-length')).toBe(490);
  });

  it('does not go round in circles', () => {
    const looped = structuredClone(exampleSheet) as unknown as {
      pieces: { dimensions: { follows?: readonly object[] }[] }[];
    };
    looped.pieces[2]!.dimensions[0]!.follows = [{ piece: 'back', name: 'width', slope: -2 }];
    const taken = placedDimensions(looped as never).map((each) => ({ ...each, by: 'value' as const }));
    const { sheet } = roundSheet(looped as never, 1, taken);
    expect(sheet.pieces[0]?.dimensions[0]?.value).toBe(511);
  });
});
