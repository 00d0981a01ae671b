import { afterAll, beforeAll, expect, it } from 'vitest';
import type { Page } from 'playwright-core';
import { inBrowser } from './support/chromium.ts';
import { soon } from './support/soon.ts';
import { quiet, servePage, type Served } from './support/open-page.ts';
import { choose, pieces, toSheet } from './support/write.ts';

inBrowser('the drawn pieces', () => {
  let served: Served;
  let page: Page;
  beforeAll(async () => {
    served = await servePage();
    page = await served.visit();
    await page.getByRole('button', { name: 'Fill in the example' }).click();
    await choose(page, 'design', 'Set-in');
    await toSheet(page);
  });
  afterAll(() => served.stop());

  /** Of every piece: the numbers on its lines, and those in its table. */
  const numbers = () =>
    pieces(page).evaluateAll((figures) =>
      figures.map((piece) => ({
        drawn: [...piece.querySelectorAll('svg text')].map((it) => it.textContent?.split(' ').at(-1) ?? ''),
        told: [...piece.querySelectorAll('tbody td')].map((it) => it.textContent?.replace(/ (cm|in)$/, '') ?? ''),
      })),
    );

  for (const tape of ['centimetres', 'inches'])
    it(`have the same numbers on their lines and in their tables, in ${tape}`, async () => {
      await page.getByRole('radio', { name: tape }).check();
      await pieces(page)
        .locator('details:not([open]) > summary')
        .evaluateAll((all) => all.forEach((it) => (it as HTMLElement).click()));
      await soon(async () => (await numbers()).every(({ told }) => told.length > 0)).toBe(true);
      const all = await numbers();
      expect(all.flatMap(({ drawn }) => drawn).length).toBeGreaterThan(10);
      for (const { drawn, told } of all) expect(told).toEqual(expect.arrayContaining(drawn));
      quiet(served);
    });
});
