/**
 * A planner that nobody here wrote, in small: it reads a target sheet with nothing to go by but the published schema
 * (/v1/schemas/target-sheet/1), and draws the pieces. It imports nothing of the project.
 *
 *     node tests/consumer/draw.mjs sheet.json > pieces.svg
 */
import { readFileSync } from 'node:fs';
import { pathToFileURL } from 'node:url';

const CENTIMETRES = { mm: 0.1, cm: 1, in: 2.54 };

/** A sheet's text, understood: its pieces in centimetres, what it warns of, and what it cannot say yet. */
export function understand(text) {
  const sheet = JSON.parse(text);
  if (sheet.format !== 'easewright/target-sheet') throw new Error('not a target sheet');
  if (Number(sheet.version.split('.')[0]) !== 1) throw new Error(`cannot read version ${sheet.version}`);
  const cm = CENTIMETRES[sheet.unit];
  if (cm === undefined) throw new Error(`unknown unit ${sheet.unit}`);

  const pieces = sheet.pieces.map((piece) => ({
    name: piece.piece,
    make: piece.make,
    mirrored: piece.mirrored,
    outline: (piece.outline ?? []).map(([x, y]) => [x * cm, y * cm]),
    sizes: piece.dimensions
      .filter((dimension) => dimension.value !== null)
      .map((dimension) => ({
        name: dimension.name,
        madeBy: dimension.axis === 'across' ? 'stitches' : 'rows',
        gauge: dimension.fabric,
        length: dimension.value * cm,
        least: dimension.low * cm,
        most: dimension.high * cm,
      })),
  }));

  const unsaid = [...sheet.assembled, ...sheet.pieces.flatMap((piece) => piece.dimensions)]
    .filter((dimension) => dimension.value === null)
    .map((dimension) => ({ name: dimension.name, measure: dimension.noAdvice.needs, why: dimension.noAdvice.reason }));

  return {
    title: sheet.title,
    pieces,
    unsaid,
    troubles: sheet.checks.filter((check) => check.verdict === 'fails').map((check) => check.advice),
    cautions: sheet.cautions.map((caution) => caution.text),
  };
}

const escape = (words) =>
  words
    .replace(/[&<>"]/g, (mark) => `&#${mark.charCodeAt(0)};`)
    .replace(/[^\t\n\r\u0020-\ud7ff\ue000-\ufffd\u{10000}-\u{10ffff}]/gu, '');

/** The pieces one under the other, a centimetre a unit. */
export function draw(understood) {
  const margin = 4;
  let top = margin;
  let width = 0;
  const shapes = [];
  for (const { name, make, outline } of understood.pieces) {
    if (outline.length === 0) continue;
    const left = Math.min(...outline.map(([x]) => x));
    const high = Math.max(...outline.map(([, y]) => y));
    const corners = outline.map(([x, y]) => `${(x - left + margin).toFixed(2)},${(top + high - y).toFixed(2)}`);
    shapes.push(`<text x="${margin}" y="${(top - 1).toFixed(2)}">${escape(name)} ×${make}</text>`);
    shapes.push(`<polygon points="${corners.join(' ')}" fill="none" stroke="black" stroke-width="0.3"/>`);
    width = Math.max(width, ...outline.map(([x]) => x - left));
    top += high + 2 * margin;
  }
  const box = `0 0 ${(width + 2 * margin).toFixed(2)} ${top.toFixed(2)}`;
  return `<svg xmlns="http://www.w3.org/2000/svg" viewBox="${box}" font-size="3"><title>${escape(understood.title)}</title>${shapes.join('')}</svg>`;
}

if (process.argv[1] && import.meta.url === pathToFileURL(process.argv[1]).href)
  process.stdout.write(draw(understand(readFileSync(process.argv[2], 'utf8'))));
