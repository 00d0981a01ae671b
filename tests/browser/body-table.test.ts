import { afterAll, beforeAll, expect, it } from 'vitest';
import type { Page } from 'playwright-core';
import { inBrowser } from './support/chromium.ts';
import { soon } from './support/soon.ts';
import { quiet, servePage, type Served } from './support/open-page.ts';
import { choose, write } from './support/write.ts';

inBrowser('the table of all body measurements', () => {
  let served: Served;
  let page: Page;
  beforeAll(async () => {
    served = await servePage();
    page = await served.visit({ viewport: { width: 360, height: 740 } });
    await page.locator('#body summary', { hasText: 'All body measures' }).click();
  });
  afterAll(() => served.stop());

  const table = () => page.locator('#body details', { hasText: 'All body measures' }).last();
  const ways = async () =>
    (await table().locator('tbody td:last-child').allInnerTexts()).map((text) =>
      text.replace(/, [\d.]+ to [\d.]+ (cm|kg)$/, ''),
    );
  const sources = () => table().getByRole('listitem').allInnerTexts();

  it('says how each was obtained, and gives the source of the estimates once', async () => {
    await write(page, 'body', { Height: '168', Chest: '94', Hip: '100' });
    await soon(async () => new Set(await ways())).toEqual(new Set(['measured', 'guessed']));
    expect(await sources()).toHaveLength(1);
    expect((await sources())[0]).toMatch(/^What is guessed: estimated from .*chest.*\(body model/);
  });

  it('is no wider than its place on a small screen, and no row is higher than a long name', async () => {
    const fits = await table()
      .getByRole('group')
      .evaluate((it) => it.scrollWidth <= it.clientWidth);
    expect(fits).toBe(true);
    const most = await table()
      .locator('tbody tr')
      .evaluateAll((rows) => {
        const lines = (row: Element): number =>
          row.getBoundingClientRect().height / parseFloat(getComputedStyle(row).lineHeight);
        return Math.max(...rows.map(lines));
      });
    expect(most).toBeLessThan(5);
  });

  it('distinguishes the sources of a child’s measurements', async () => {
    await choose(page, 'body', 'a child');
    await write(page, 'body', { 'Age in years': '4', Height: '', Chest: '58', Hip: '' });
    await soon(ways).toContain('from a table');
    await soon(sources).toContain('Round the armhole: 2 × scye depth (assumed).');
    quiet(served);
  });
});
