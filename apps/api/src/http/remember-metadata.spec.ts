import { getMetadataStorage, IsInt, IsString, validateSync } from 'class-validator';
import { describe, expect, it } from 'vitest';
import { rememberMetadata } from './remember-metadata.ts';

class Piece {
  @IsString()
  name: unknown = 7;
}
class Sleeve extends Piece {
  @IsInt()
  rows: unknown = 'many';
}

const wrong = (of: object): string[] => validateSync(of).map(({ property }) => property);

describe('metadata that is remembered', () => {
  it('is what was found before, of a class and of what it inherits', () => {
    const before = [wrong(new Sleeve()), wrong(new Piece())];
    rememberMetadata();
    expect([wrong(new Sleeve()), wrong(new Piece())]).toEqual(before);
    expect([wrong(new Sleeve()), wrong(new Piece())]).toEqual([['rows', 'name'], ['name']]);
    const find = () => getMetadataStorage().getTargetValidationMetadatas(Sleeve, '', false, false);
    expect(find()).toBe(find());
  });

  it('is not kept of what is no class', () => {
    rememberMetadata();
    const find = () => getMetadataStorage().getTargetValidationMetadatas('Sleeve' as never, '', false, false);
    expect(find()).toEqual([]);
    expect(find()).not.toBe(find());
  });
});
