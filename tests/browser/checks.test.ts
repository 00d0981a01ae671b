import { afterAll, beforeAll, expect, it } from 'vitest';
import type { Page } from 'playwright-core';
import { inBrowser } from './support/chromium.ts';
import { soon } from './support/soon.ts';
import { quiet, servePage, type Served } from './support/open-page.ts';
import { HER, checks, choose, toSheet, write } from './support/write.ts';

inBrowser('the comparison that a check makes', () => {
  let served: Served;
  let page: Page;
  beforeAll(async () => {
    served = await servePage();
    page = await served.visit();
    await page.getByRole('radio', { name: 'inches' }).check();
    // A hand as narrow as the wrist, and a front that is longer than the back.
    await write(page, 'body', { ...HER, Hand: '6 1/4', 'Shoulder to waist, in front': '19' });
    await page.getByRole('radio', { name: 'centimetres' }).check();
    await choose(page, 'design', 'Set-in');
    await toSheet(page);
  });
  afterAll(() => served.stop());

  const check = (name: string) => checks(page).filter({ hasText: name });

  it('names what it compares', async () => {
    await soon(() => check('Cuff stays up').getByRole('paragraph').nth(2).innerText()).toMatch(
      // 1.08 × 6 1/4 in are 17.1 cm.
      /^The cuff inside [\d.]+ cm, the hand with the root of its thumb 17 cm\. Chance that it does not sit well: \d+%\.$/,
    );
    // 19 − 16 3/4 in are 5.7 cm.
    expect(await check('Front and back').getByRole('paragraph').nth(2).innerText()).toMatch(
      /^The front less the back 5\.5 cm; up to [\d.]+ cm needs no short rows\./,
    );
    expect(await page.locator('#checks').getByRole('list').innerText()).not.toMatch(/Needs .*, has/);
  });

  it('has a verdict that is not the name of an ease', async () => {
    const eases = await page.locator('#design fieldset', { hasText: 'Ease' }).first().locator('label').allInnerTexts();
    expect(eases).toContain('Close');
    const verdicts = await checks(page).getByRole('strong').allInnerTexts();
    expect(verdicts).toContain('In doubt');
    for (const verdict of verdicts) expect(eases).not.toContain(verdict);
  });

  it('stands in the table of all checks in the same words', async () => {
    await page.locator('#checks summary', { hasText: 'All checks as a table' }).click();
    const row = page.locator('#checks tr', { hasText: 'Cuff stays up' });
    expect(await row.locator('td').nth(1).innerText()).toMatch(
      /^The cuff inside [\d.]+ cm, the hand with the root of its thumb 17 cm\.$/,
    );
    quiet(served);
  });
});
