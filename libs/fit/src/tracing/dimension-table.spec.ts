import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { fitRequest } from '../../../../tests/support/fit-requests.ts';
import { adviceOn, type Differs } from '../../../../tests/support/fit-samples.ts';
import { ASSEMBLED_NAMES, PIECE_DIMENSION_NAMES, PIECES } from '../messages/advice.ts';
import { advise } from '../advice/advise.ts';

const names = (dimensions: readonly { readonly name: string }[]) => dimensions.map(({ name }) => name);

describe('the dimensions of a sheet', () => {
  it('have names of the closed lists, each once in its place', () => {
    fc.assert(
      fc.property(fitRequest, (request) => {
        const { assembled, pieces } = advise(request);
        for (const [told, listed] of [
          [names(assembled), ASSEMBLED_NAMES],
          ...pieces.map(({ dimensions }) => [names(dimensions), PIECE_DIMENSION_NAMES] as const),
          [pieces.map(({ piece }) => piece), PIECES],
        ] as const) {
          expect(new Set(told).size).toBe(told.length);
          for (const name of told) expect(listed).toContain(name);
        }
      }),
      { numRuns: 60 },
    );
  });

  it('are made by stitches or rows, in the main fabric or in rib', () => {
    for (const construction of ['drop-shoulder', 'set-in', 'raglan'] as const)
      for (const { dimensions } of adviceOn({ design: { construction, silhouette: 'cardigan' } }).pieces)
        for (const { name, axis, fabric } of dimensions) {
          if (/width|bind-off/.test(name) || name === 'neck-edge') expect(axis, name).toBe('across');
          if (/length|depth|to-|height|seam/.test(name)) expect(axis, name).toBe('along');
          if (/^(rib|band)|^cuff|^neck-edge/.test(name)) expect(fabric, name).toBe('rib');
        }
  });
});

describe('the length of an opening', () => {
  const namesOf = (design: NonNullable<Differs['design']>) => names(adviceOn({ design }).assembled);

  it('is a dimension of a neck that opens, and of no other', () => {
    expect(namesOf({ opening: { at: 'back', lengthMm: 60 } })).toContain('opening-length');
    expect(namesOf({})).not.toContain('opening-length');
    expect(namesOf({ opening: { at: 'none', lengthMm: null } })).not.toContain('opening-length');
  });
});

describe('the pieces', () => {
  it.each([
    ['pullover', ['back', 'front', 'sleeve', 'neck-band']],
    ['cardigan', ['back', 'left-front', 'right-front', 'sleeve', 'front-band', 'neck-band']],
    ['vest', ['back', 'front', 'neck-band', 'armhole-band']],
  ] as const)('of a %s', (silhouette, expected) => {
    const { pieces } = adviceOn({ design: { silhouette } });
    expect(pieces.map(({ piece }) => piece)).toEqual(expected);
    for (const { piece, make } of pieces)
      expect(make, piece).toBe(/sleeve|front-band|armhole-band/.test(piece) ? 2 : 1);
  });

  it.each([
    ['drop-shoulder', 'armhole-depth', []],
    ['squared-drop', 'armhole-inset', ['armhole-inset']],
    ['set-in', 'underarm-bind-off', ['cap-height', 'cap-top-width', 'underarm-bind-off']],
    ['raglan', 'raglan-bind-off', ['sleeve-raglan-depth', 'cap-top-width', 'raglan-bind-off']],
  ] as const)('of a %s have what its shape needs', (construction, ofBody, ofSleeve) => {
    const { pieces } = adviceOn({ design: { construction } });
    expect(names(pieces[0]!.dimensions)).toContain(ofBody);
    const sleeve = names(pieces.find(({ piece }) => piece === 'sleeve')!.dimensions);
    expect(sleeve.filter((name) => /cap|raglan|inset|bind-off/.test(name))).toEqual(ofSleeve);
  });
});
