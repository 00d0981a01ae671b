/**
 * Sheets as they were downloaded once, read by a program that knows the published schema and nothing else of ours. They
 * are never regenerated: what was handed out as version 1 stays readable.
 */
import { execFileSync } from 'node:child_process';
import { readFileSync, readdirSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { draw, understand } from './draw.mjs';

const folder = new URL('./sheets/', import.meta.url);
const files = readdirSync(folder).filter((name) => name.endsWith('.json'));
const read = (name: string) => understand(readFileSync(new URL(name, folder), 'utf8'));

const extent = (outline: readonly (readonly [number, number])[], axis: 0 | 1): number =>
  Math.max(...outline.map((point) => point[axis])) - Math.min(...outline.map((point) => point[axis]));

describe('a planner that nobody here wrote', () => {
  it('finds sheets to read', () => {
    expect(files).toEqual(['child-cardigan-in.json', 'pullover-mm.json', 'pullover-neck-unknown-cm.json']);
  });

  it.each(files)('reads and draws %s', (name) => {
    const sheet = read(name);
    const drawn = sheet.pieces.filter(({ outline }) => outline.length > 0);
    const svg = draw(sheet);
    expect(svg.match(/<polygon /g) ?? []).toHaveLength(drawn.length);
    expect(svg).not.toMatch(/NaN|undefined|Infinity/);
    for (const { outline, sizes } of drawn)
      for (const { length, least, most } of sizes) {
        expect(least).toBeLessThanOrEqual(length);
        expect(length).toBeLessThanOrEqual(most);
        expect(Math.min(extent(outline, 0), extent(outline, 1))).toBeGreaterThan(0);
      }
  });

  it('runs by itself, from a file to a drawing', () => {
    const script = new URL('./draw.mjs', import.meta.url);
    const sheet = new URL('pullover-mm.json', folder);
    const svg = execFileSync(process.execPath, [script.pathname, sheet.pathname], { encoding: 'utf8' });
    expect(svg).toBe(draw(read('pullover-mm.json')));
  });

  it('has each length in its own unit, whatever the sheet’s', () => {
    // The model's first worked example: panel 510.9 mm, sleeve 487.5 mm
    const [back, , sleeve] = read('pullover-mm.json').pieces;
    expect(back?.sizes.find(({ name }) => name === 'width')?.length).toBeCloseTo(51.09, 2);
    expect(extent(sleeve?.outline ?? [], 1)).toBeCloseTo(48.75, 2);
    // A six-year-old's: 349.5 mm (fifth worked example)
    const [child] = read('child-cardigan-in.json').pieces;
    expect(child?.sizes.find(({ name }) => name === 'width')?.length).toBeCloseTo(34.95, 2);
  });

  it('knows which measure would say what a sheet cannot', () => {
    expect(read('pullover-neck-unknown-cm.json').unsaid).toContainEqual({
      name: 'neck-width',
      measure: ['neck-base-girth'],
      why: expect.any(String) as string,
    });
  });

  it('has the cautions to show', () => {
    expect(read('child-cardigan-in.json').cautions.join(' ')).toMatch(/cord/i);
  });

  it('refuses what it was not written for', () => {
    expect(() => understand('{"format":"easewright/target-sheet","version":"2.0","unit":"mm"}')).toThrow('version 2.0');
    expect(() => understand('{"format":"something/else"}')).toThrow('not a target sheet');
  });
});
