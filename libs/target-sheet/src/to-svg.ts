import type { DrawnOpening } from './drawing/draw-opening.ts';
import type { Measure } from './drawing/draw-piece.ts';
import type { PlacedPiece } from './drawing/flow.ts';
import { TEXT_SIZE } from './drawing/label.ts';
import type { Point } from './drawing/plane.ts';
import { MARGIN, schematic } from './drawing/schematic.ts';
import type { TargetSheet } from './target-sheet.ts';

/** Half of the stroke that ends a dimension line. */
const TICK = 3.5;

/**
 * A sheet's pieces as an SVG drawing to scale, so wide in CSS pixels (at least 280), their measures written on it:
 * strokes of the current colour on nothing, no scripts, nothing fetched.
 */
export function toSvg(sheet: TargetSheet, options: { readonly width?: number | undefined } = {}): string {
  const { width, height, title, description, legend, pieces } = schematic(sheet, options);
  const size = `width="${number(width)}" height="${number(height)}" viewBox="0 0 ${number(width)} ${number(height)}"`;
  return [
    `<svg xmlns="http://www.w3.org/2000/svg" ${size} role="img" color="#222" fill="currentColor" font-family="system-ui, sans-serif" font-size="${TEXT_SIZE}">`,
    `<title>${escaped(title)}</title>`,
    `<desc>${escaped(description)}</desc>`,
    text(legend, [MARGIN, MARGIN + TEXT_SIZE], 'start'),
    ...pieces.map(pieceGroup),
    '</svg>',
    '',
  ].join('\n');
}

function pieceGroup(piece: PlacedPiece): string {
  const outline = piece.outline.map(point).join(' ');
  return [
    `<g data-piece="${piece.piece}" transform="translate(${piece.at.map(number).join(' ')})">`,
    ...(piece.rib.length > 0
      ? [path(piece.rib.map(([from, to]) => `M${point(from)}L${point(to)}`).join(''), 0.6, 0.5)]
      : []),
    ...(outline === ''
      ? []
      : [`<polygon points="${outline}" fill="none" stroke="currentColor" stroke-width="2" stroke-linejoin="round"/>`]),
    ...piece.measures.map(measure),
    ...piece.openings.map(opening),
    ...piece.words.map((words, index) => text(words.text, words.at, 'start', index === 0 ? ' font-weight="600"' : '')),
    '</g>',
  ].join('\n');
}

function measure({ name, from, to, label, labelAt, upright, anchor }: Measure): string {
  const standing = from[0] === to[0];
  const tick = ([x, y]: Point): string =>
    standing ? `M${point([x - TICK, y])}L${point([x + TICK, y])}` : `M${point([x, y - TICK])}L${point([x, y + TICK])}`;
  const turn = upright ? ` transform="rotate(-90 ${labelAt.map(number).join(' ')})"` : '';
  return [
    `<g data-dimension="${name}">`,
    path(`M${point(from)}L${point(to)}${tick(from)}${tick(to)}`, 0.8, 0.8),
    text(label, labelAt, anchor, `${turn} dy="0.35em"`),
    '</g>',
  ].join('');
}

/** An opening is a row of dots, as of buttons. */
const opening = ({ from, to, label, labelAt }: DrawnOpening): string =>
  [
    '<g data-dimension="opening-length">',
    `<path d="M${point(from)}L${point(to)}" fill="none" stroke="currentColor" stroke-width="6" stroke-linecap="round" stroke-dasharray="0 9"/>`,
    ...(label === null ? [] : [text(label, labelAt, 'start', ' dy="0.35em"')]),
    '</g>',
  ].join('');

const path = (d: string, width: number, opacity: number): string =>
  `<path d="${d}" fill="none" stroke="currentColor" stroke-width="${width}" stroke-opacity="${opacity}"/>`;

const text = (words: string, [x, y]: Point, anchor: string, more = ''): string =>
  `<text x="${number(x)}" y="${number(y)}" text-anchor="${anchor}"${more}>${escaped(words)}</text>`;

const point = ([x, y]: Point): string => `${number(x)},${number(y)}`;
/** A hundredth of a pixel is enough. */
const number = (value: number): string => String(Number(value.toFixed(2)));

/** Text for XML: its marks escaped, what XML 1.0 cannot hold left out. */
const escaped = (words: string): string =>
  [...words]
    .filter((character) => /[\t\n\r\u0020-\ud7ff\ue000-\ufffd\u{10000}-\u{10ffff}]/u.test(character))
    .join('')
    .replaceAll('&', '&amp;')
    .replaceAll('<', '&lt;')
    .replaceAll('>', '&gt;')
    .replaceAll('"', '&quot;');
