import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { cardiganSheet, pulloverSheet, sampleSheets } from '../../../tests/target-sheet/samples/index.ts';
import { toSvg } from './to-svg.ts';

/** Tags of a document, opened and closed in order; throws where it is no well-formed XML of the kind we write. */
function tagsOf(xml: string): string[] {
  const open: string[] = [];
  const seen: string[] = [];
  const rest = xml.replace(
    /<(\/?)([a-z]+)((?: [A-Za-z-]+="[^"<&]*(?:&[a-z]+;[^"<&]*)*")*)(\/?)>/g,
    (_, end, name, __, empty) => {
      if (end !== '') expect(open.pop()).toBe(name);
      else if (empty === '') open.push(name);
      if (end === '') seen.push(name);
      return '';
    },
  );
  expect(open).toEqual([]);
  expect(rest).not.toMatch(/[<>]|&(?!(amp|lt|gt|quot);)/);
  return seen;
}

describe('a sheet as SVG', () => {
  it('has a title and a description in words', () => {
    const svg = toSvg(pulloverSheet);
    expect(svg).toContain('<title>Grey pullover</title>');
    expect(svg).toContain('<desc>Back, make 1: width 51.1 cm, ');
  });

  it('has an outline for each piece that has one', () => {
    for (const sheet of sampleSheets) {
      const outlines = sheet.pieces.filter(({ outline }) => outline).length;
      expect(tagsOf(toSvg(sheet)).filter((tag) => tag === 'polygon')).toHaveLength(outlines);
    }
  });

  it('draws with strokes and words alone: nothing runs, nothing is fetched', () => {
    for (const sheet of sampleSheets) {
      const svg = toSvg(sheet, { width: 360 });
      expect(new Set(tagsOf(svg))).toEqual(new Set(['svg', 'title', 'desc', 'g', 'path', 'polygon', 'text']));
      expect(svg).not.toMatch(/\b(href|style|on\w+)=|url\(/);
    }
  });

  it('takes the colour of the page it is put in', () => {
    const colours = toSvg(cardiganSheet).match(/(?:fill|stroke)="([^"]*)"/g);
    expect(new Set(colours)).toEqual(new Set(['fill="currentColor"', 'fill="none"', 'stroke="currentColor"']));
  });

  it('is well-formed whatever the title', () => {
    const title = fc.oneof(
      fc.string({ unit: 'binary' }),
      fc.constantFrom('</title><script>', '&', '"\'', '\u0000\ud800\uffff'),
    );
    fc.assert(
      fc.property(title, (words) => {
        tagsOf(toSvg({ ...pulloverSheet, title: words }));
      }),
    );
  });
});
