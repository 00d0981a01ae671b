import { existsSync } from 'node:fs';
import { describe, it } from 'vitest';

const PLACES = ['/usr/bin/chromium', '/usr/bin/chromium-browser', '/usr/bin/google-chrome'];

/** Where a Chromium is, or null: CHROMIUM names one, else the usual places are looked at. */
export const CHROMIUM =
  [process.env['CHROMIUM'] ?? '', ...PLACES].find((place) => place !== '' && existsSync(place)) ?? null;

/** Tests in a browser. Without one they are skipped and say so; where CI is set that is a failure. */
export function inBrowser(name: string, tests: () => void): void {
  if (CHROMIUM !== null) describe(name, tests);
  else if (process.env['CI'])
    it(`${name}: needs Chromium (Debian: apt-get install chromium)`, () =>
      Promise.reject(new Error('No Chromium was found.')));
  else describe.skip(`${name} (skipped: no Chromium was found; CHROMIUM may name one)`, tests);
}
