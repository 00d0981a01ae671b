import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { cardiganSheet, pulloverSheet, sampleSheets } from '../../../tests/target-sheet/samples/index.ts';
import { PIECE_DIMENSION_NAMES } from '#fit';
import { inUnit } from './in-unit.ts';
import { SHEET_UNITS } from './target-sheet.ts';
import { toText } from './to-text.ts';

const widest = (text: string): number => Math.max(...text.split('\n').map((line) => [...line].length));
const lineWith = (text: string, words: string): string => text.split('\n').find((line) => line.includes(words)) ?? '';

describe('a sheet as plain text', () => {
  it('keeps to 80 columns', () => {
    for (const sheet of sampleSheets)
      for (const unit of SHEET_UNITS) expect(widest(toText(inUnit(sheet, unit)))).toBeLessThanOrEqual(80);
  });

  it('keeps to them with the longest names and the most figures, seams and inches', () => {
    const [piece] = pulloverSheet.pieces;
    const [known] = piece!.dimensions.filter(({ value }) => value !== null);
    const long = { value: 1209, u: 12, low: 1206, high: 1225, asMade: 1219, allowance: 10 };
    const dimensions = PIECE_DIMENSION_NAMES.map((name) => ({ ...known!, ...long, name, fabric: 'main' as const }));
    const sheet = { ...pulloverSheet, pieces: [{ ...piece!, dimensions }] };
    for (const unit of SHEET_UNITS) expect(widest(toText(inUnit(sheet, unit)))).toBeLessThanOrEqual(80);
  });

  it('leaves a number and its unit in one line', () => {
    for (let words = 0; words < 40; words++) {
      const notes = [{ code: 'long', text: `${'a '.repeat(words)}the neck is 12 % wider, by 3.5 cm or 1 1/2 in.` }];
      expect(toText({ ...pulloverSheet, notes })).not.toMatch(/\d\n\s*(%|cm|in)/);
    }
  });

  it('gives each length in centimetres and in eighths of an inch, with its limits', () => {
    // 513.5 mm = 51.35 cm = 20.217 in, nearest eighth 20 2/8; u 7.5; low 507.0, high 526.0
    expect(lineWith(toText(pulloverSheet), 'chest width')).toBe(
      '  chest width         51.4   20 1/4  0.8  50.7 to 52.6',
    );
  });

  it('gives limits in inches to a maker in inches, in eighths that lie within them', () => {
    // 507.0 mm = 19.961 in, the next eighth is 20; 526.0 mm = 20.709 in, the last is 20 5/8; u 7.5 mm = 0.295 in
    const line = lineWith(toText(inUnit(pulloverSheet, 'in')), 'chest width');
    expect(line).toMatch(/51\.4 {3}20 1\/4 {2}0\.3 +20 to 20 5\/8$/);
  });

  it('shows the size off the needles only where it is another', () => {
    expect(toText(pulloverSheet)).toContain('unwashed');
    // 487.5 / 1.02 = 477.94
    expect(lineWith(toText(pulloverSheet), 'sleeve length     48.8')).toContain('47.8');
    const washed = pulloverSheet.pieces.map((piece) => ({
      ...piece,
      dimensions: piece.dimensions.map((dimension) => ({ ...dimension, asMade: dimension.value })),
    }));
    expect(toText({ ...pulloverSheet, pieces: washed })).not.toContain('nwashed');
  });

  it('tells a seam allowance from growth', () => {
    const [piece] = pulloverSheet.pieces;
    const dimensions = piece!.dimensions.map((each) =>
      each.value === null ? each : { ...each, allowance: 20, asMade: each.value + 20 },
    );
    const text = toText({ ...pulloverSheet, pieces: [{ ...piece!, dimensions }] });
    expect(widest(text)).toBeLessThanOrEqual(80);
    expect(text).toContain('seamed');
    expect(text).not.toContain('nwashed');
    const grown = dimensions.map((each) => (each.value === null ? each : { ...each, asMade: each.asMade! / 1.05 }));
    const both = toText({ ...pulloverSheet, pieces: [{ ...piece!, dimensions: grown }] }).replace(/\s+/g, ' ');
    expect(both).toContain('It holds the seam allowance');
  });

  it('says which measure would give what has no advice', () => {
    expect(toText(cardiganSheet).replace(/\s+/g, ' ')).toContain(
      'neck width: no advice. Take neck base girth. No table gives it.',
    );
  });

  it('puts the worst check first', () => {
    const text = toText(pulloverSheet);
    const places = [
      'FAILS    hip',
      'tight    head',
      'unknown  cuff stays',
      'fine     sleeve taper',
      'does not apply: seam',
    ];
    expect(places.map((words) => text.indexOf(words)).every((at, index, all) => at > (all[index - 1] ?? 0))).toBe(true);
  });

  it('tells the difference of two lengths, and how large it may be', () => {
    const compared = { verdict: 'tight', need: 12, have: 25, margin: 13, u: 20, chanceOfFailing: 0.26 } as const;
    const checks = pulloverSheet.checks.map((check) =>
      check.check === 'seam'
        ? { check: check.check, unit: check.unit, comfort: check.comfort, advice: check.advice, ...compared }
        : check,
    );
    expect(toText({ ...pulloverSheet, checks })).toContain('seam: difference 1.2 cm, at most 2.5 cm;');
  });

  it('names the construction, and tells a garment smaller inside than what it goes round', () => {
    const { design } = pulloverSheet;
    const close = {
      ...pulloverSheet,
      design: { ...design, construction: 'set-in', ease: { ...design.ease, room: -87 } },
    };
    const text = toText(close as typeof pulloverSheet).replace(/\s+/g, ' ');
    expect(text).toContain('Set-in pullover');
    expect(text).toContain('Inside it is 8.7 cm smaller than what it goes round.');
  });

  it('gives the changes that make a check hold', () => {
    const remedies = [{ text: 'Choose 2.5 cm more ease', change: { easeMm: 100 } }];
    const checks = pulloverSheet.checks.map((check) => (check.check === 'hip' ? { ...check, remedies } : check));
    expect(toText({ ...pulloverSheet, checks })).toMatch(/FAILS {4}hip(.*\n){1,4} +- Choose 2\.5 cm more ease\.\n/);
  });

  it('holds every dimension, caution and note', () => {
    for (const sheet of sampleSheets) {
      const text = toText(sheet).replace(/\s+/g, ' ');
      const names = [sheet.assembled, ...sheet.pieces.map(({ dimensions }) => dimensions)]
        .flat()
        .map(({ name }) => name);
      for (const name of names) expect(text).toContain(name.replaceAll('-', ' '));
      for (const { text: words } of [...sheet.cautions, ...sheet.notes]) expect(text).toContain(words);
    }
  });

  it('sends a terminal no orders, and stays within 80 columns, whatever the maker or another program wrote', () => {
    const text = fc.oneof(
      fc.string({ unit: 'binary', maxLength: 200 }),
      fc.constantFrom('\u001b[31mred', 'a'.repeat(200)),
    );
    fc.assert(
      fc.property(text, (words) => {
        const notes = [{ code: 'x', text: words, source: words }];
        const printed = toText({ ...pulloverSheet, title: words, notes, cautions: notes });
        expect(printed.replaceAll('\n', '')).not.toMatch(/[\p{Cc}\u202a-\u202e\u2066-\u2069]/u);
        expect(widest(printed)).toBeLessThanOrEqual(80);
      }),
    );
  });
});
