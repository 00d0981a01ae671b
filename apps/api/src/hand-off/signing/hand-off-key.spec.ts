import { chmodSync, mkdtempSync, readdirSync, rmSync, statSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import { StartError } from '../../settings/start-error.ts';
import { handOffKey, keyFromFile } from './hand-off-key.ts';

let folder: string;
beforeEach(() => void (folder = mkdtempSync(join(tmpdir(), 'key-'))));
afterEach(() => rmSync(folder, { recursive: true }));

describe('keyFromFile', () => {
  it('makes a key of 32 bytes for its owner alone, and reads the same one ever after', () => {
    const file = join(folder, 'deeper', 'hand-off.key');
    const key = keyFromFile(file);
    expect(key).toHaveLength(32);
    expect(statSync(file).mode & 0o777).toBe(0o600);
    expect(keyFromFile(file)).toEqual(key);
    expect(readdirSync(join(folder, 'deeper'))).toEqual(['hand-off.key']);
  });

  it('stops the start where others can read it, and where it holds no key', () => {
    const file = join(folder, 'hand-off.key');
    keyFromFile(file);
    chmodSync(file, 0o640);
    expect(() => keyFromFile(file)).toThrow(/chmod 600/);
    writeFileSync(file, 'short\n');
    chmodSync(file, 0o600);
    expect(() => keyFromFile(file)).toThrow(StartError);
  });

  it('says in one line that it cannot be made', () => {
    writeFileSync(join(folder, 'file'), '');
    expect(() => keyFromFile(join(folder, 'file', 'hand-off.key'))).toThrow(/cannot be read or made \(ENOTDIR\)/);
  });
});

it('a key from the environment is 32 bytes in base64', () => {
  expect(handOffKey(`${Buffer.alloc(32, 7).toString('base64')}\n`, 'HANDOFF_KEY')).toEqual(Buffer.alloc(32, 7));
  expect(() => handOffKey('c2hvcnQ=', 'HANDOFF_KEY')).toThrow('HANDOFF_KEY must be 32 bytes');
});
