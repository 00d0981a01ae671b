import { randomBytes } from 'node:crypto';
import { dirname, join, resolve } from 'node:path';
import type { DatabaseSettings, Environment } from '../settings/settings.ts';
import { StartError } from '../settings/start-error.ts';
import { AddressPolicy } from './addresses/address-policy.ts';
import { handOffKey, keyFromFile } from './signing/hand-off-key.ts';
import { KEY_BYTES } from './signing/secret-box.ts';

/** What the operator chose for handing sheets on; also the token it is injected by. */
export abstract class HandOffSettings {
  /** Seals the planners' signing secrets. */
  abstract readonly key: Buffer;
  abstract readonly addresses: AddressPolicy;
  /** Where planners reach this service, without a slash at the end; null for the address it is asked at. */
  abstract readonly publicUrl: string | null;
}

/**
 * Reads HANDOFF_KEY (32 bytes in base64; else the file hand-off.key beside the data), HANDOFF_ALLOW (addresses besides the
 * public ones: `loopback`, ranges) and PUBLIC_URL.
 *
 * @throws StartError naming the setting that is wrong
 */
export function handOffSettingsFrom(env: Environment, database: DatabaseSettings): HandOffSettings {
  return {
    key: env['HANDOFF_KEY'] ? handOffKey(env['HANDOFF_KEY'], 'HANDOFF_KEY') : keyBeside(database, env['DATA_DIR']),
    addresses: AddressPolicy.allowing(env['HANDOFF_ALLOW'] ?? ''),
    publicUrl: publicUrlFrom(env['PUBLIC_URL']),
  };
}

/** Secrets of a database in memory are gone with it, and so may the key be. */
function keyBeside(database: DatabaseSettings, dataFolder: string | undefined): Buffer {
  if (database.kind === 'sqlite' && database.file === ':memory:') return randomBytes(KEY_BYTES);
  const folder = database.kind === 'sqlite' ? dirname(database.file) : resolve(dataFolder || 'data');
  return keyFromFile(join(folder, 'hand-off.key'));
}

function publicUrlFrom(text: string | undefined): string | null {
  if (!text) return null;
  if (/^https?:\/\//.test(text) && URL.canParse(text)) return text.replace(/\/+$/, '');
  throw new StartError(`PUBLIC_URL is “${text}”; it must be the address planners reach this service at: https://…`);
}
