import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { anyInput } from '../../../../tests/target-sheet/any-input.ts';
import { meta } from '../../../../tests/target-sheet/inputs.ts';
import { cardiganSheet, pulloverSheet, sampleSheets } from '../../../../tests/target-sheet/samples/index.ts';
import { composeSheet } from '../compose-sheet.ts';
import { inUnit } from '../in-unit.ts';
import type { TargetSheet } from '../target-sheet.ts';
import type { DrawnOpening } from './draw-opening.ts';
import { TEXT_SIZE, textWidth } from './label.ts';
import { schematic, type Schematic } from './schematic.ts';

interface Rect {
  readonly what: string;
  readonly left: number;
  readonly right: number;
  readonly top: number;
  readonly bottom: number;
}

/** What the words on a drawing cover, their ascenders and descenders left out. */
function wordsOn({ pieces }: Schematic): Rect[] {
  const high = TEXT_SIZE * 0.7;
  return pieces.flatMap(({ piece, at: [x, y], measures, openings, words }) => [
    ...[...measures, ...openings.flatMap(worded)].map(({ label, labelAt, upright, anchor }): Rect => {
      const [middleX, middleY] = [x + labelAt[0], y + labelAt[1]];
      const long = textWidth(label);
      const [wide, tall] = upright ? [high, long] : [long, high];
      const left = anchor === 'start' ? middleX : middleX - wide / 2;
      return {
        what: `${piece} ${label}`,
        left,
        right: left + wide,
        top: middleY - tall / 2,
        bottom: middleY + tall / 2,
      };
    }),
    ...words.map(({ text, at }): Rect => {
      const [left, bottom] = [x + at[0], y + at[1]];
      return { what: `${piece} ${text}`, left, right: left + textWidth(text), top: bottom - high, bottom };
    }),
  ]);
}

/** The words of an opening, as those of a measure. */
const worded = ({ label, labelAt }: DrawnOpening) =>
  label === null ? [] : [{ label, labelAt, upright: false, anchor: 'start' as const }];

const overlap = (one: Rect, other: Rect): boolean =>
  one.left < other.right && other.left < one.right && one.top < other.bottom && other.top < one.bottom;

function overlapping(drawing: Schematic): string[] {
  const words = wordsOn(drawing);
  return words.flatMap((one, index) =>
    words.slice(index + 1).flatMap((other) => (overlap(one, other) ? [`${one.what} and ${other.what}`] : [])),
  );
}

const drawn = (sheet: TargetSheet, piece: string, width?: number) =>
  schematic(sheet, { width }).pieces.find((each) => each.piece === piece);

describe('a schematic', () => {
  it('draws every piece to one scale', () => {
    const { scale, pieces } = schematic(pulloverSheet);
    for (const { piece, outline } of pieces) {
      const given = pulloverSheet.pieces.find((each) => each.piece === piece)?.outline ?? [];
      const wide = (points: readonly (readonly number[])[], axis: number): number =>
        Math.max(...points.map((point) => point[axis] ?? NaN)) - Math.min(...points.map((point) => point[axis] ?? NaN));
      // A band stands upright: its width is drawn as height.
      const [across, up] = piece === 'neck-band' ? [1, 0] : [0, 1];
      expect(wide(outline, 0) / scale).toBeCloseTo(wide(given, across), 6);
      expect(wide(outline, 1) / scale).toBeCloseTo(wide(given, up), 6);
    }
  });

  it('draws each dimension line as long as its dimension', () => {
    for (const sheet of sampleSheets) {
      const { scale, pieces } = schematic(sheet);
      for (const { piece, measures } of pieces)
        for (const { name, from, to } of measures) {
          const value = sheet.pieces
            .find((each) => each.piece === piece)
            ?.dimensions.find((each) => each.name === name)?.value;
          expect(Math.hypot(to[0] - from[0], to[1] - from[1]) / scale).toBeCloseTo(value ?? NaN, 1);
        }
    }
  });

  it('draws an opening as long as it is, along the edge of the neck or down from it', () => {
    const pieces = (at: TargetSheet['design']['opening']['at']) =>
      schematic({ ...pulloverSheet, design: { ...pulloverSheet.design, opening: { at, length: 50 } } });
    const opened = (at: TargetSheet['design']['opening']['at']) =>
      pieces(at).pieces.flatMap(({ piece, openings }) =>
        openings.map(({ from, to }) => [
          piece,
          Math.sign(Math.round(to[0] - from[0])),
          Math.hypot(to[0] - from[0], to[1] - from[1]) / pieces(at).scale,
        ]),
      );
    const long = expect.closeTo(50, 6) as number;
    expect(opened('none')).toEqual([]);
    expect(opened('back')).toEqual([['back', 0, long]]);
    expect(opened('front')).toEqual([['front', 0, long]]);
    // The wearer's left shoulder is at the right of a front, and at the left of a back.
    expect(opened('shoulder')).toEqual([
      ['back', -1, long],
      ['front', 1, long],
    ]);
    expect(opened('shoulders')).toEqual([
      ['back', 1, long],
      ['back', -1, long],
      ['front', 1, long],
      ['front', -1, long],
    ]);
    expect(pieces('shoulders').description).toContain('opens 5.0 cm');
  });

  it('says every dimension once: on a line, or in the words below', () => {
    for (const sheet of sampleSheets)
      for (const { piece, dimensions } of sheet.pieces) {
        const one = drawn(sheet, piece);
        const said = [...(one?.measures ?? []).map(({ name }) => name), ...(one?.unplaced ?? [])];
        expect(said.toSorted()).toEqual(dimensions.map(({ name }) => name).toSorted());
      }
  });

  it('writes centimetres, or eighths of an inch for a maker in inches', () => {
    const label = (sheet: TargetSheet) => drawn(sheet, 'back')?.measures.find(({ name }) => name === 'width')?.label;
    expect(label(pulloverSheet)).toBe('width 51.1');
    // 510.9 mm = 20.114 in
    expect(label(inUnit(pulloverSheet, 'in'))).toBe('width 20⅛');
  });

  it('is as wide as asked, and never too narrow to read', () => {
    expect(schematic(pulloverSheet, { width: 360 }).width).toBe(360);
    expect(schematic(pulloverSheet, { width: 1 }).width).toBe(280);
    expect(schematic(pulloverSheet).width).toBe(960);
  });

  it('names a piece without an outline, with the dimensions it has', () => {
    const band = drawn(cardiganSheet, 'neck-band');
    expect(band?.outline).toEqual([]);
    expect(band?.words.map(({ text }) => text)).toEqual([
      'Neck band, make 1',
      'neck edge no advice,',
      'band depth 2.1',
    ]);
  });

  it('keeps its words apart and within the drawing, for any garment on any screen', () => {
    fc.assert(
      fc.property(anyInput, fc.constantFrom(280, 360, 768, 1280), (input, width) => {
        const drawing = schematic(composeSheet(input, meta), { width });
        expect(overlapping(drawing)).toEqual([]);
        for (const { left, right, top, bottom } of wordsOn(drawing)) {
          expect(Math.min(left, top)).toBeGreaterThanOrEqual(0);
          expect(right).toBeLessThanOrEqual(width);
          expect(bottom).toBeLessThanOrEqual(drawing.height);
        }
      }),
      { numRuns: 200 },
    );
  });
});
