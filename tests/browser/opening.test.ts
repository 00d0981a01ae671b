import { expect, it } from 'vitest';
import type { Page } from 'playwright-core';
import { inBrowser } from './support/chromium.ts';
import { eachVisit } from './support/open-page.ts';
import { soon } from './support/soon.ts';
import { checks, choose, field, keptSheets, pieces, toSheet, turnTo, write } from './support/write.ts';

inBrowser('the opening of a neck', () => {
  let page: Page;
  eachVisit((visitor) => (page = visitor));

  const opens = async () =>
    (await pieces(page).locator('text').allTextContents()).filter((text) => text.startsWith('opens'));
  const baby = async () => {
    await choose(page, 'body', 'a baby');
    await write(page, 'body', { Chest: '46', 'Age in years': '1' });
    await choose(page, 'yarn', 'crochet');
    await write(page, 'yarn', { 'Four layers, how high': '12' });
  };

  it('of a crocheted baby’s crew is at both shoulders, drawn on back and front, and said', async () => {
    await baby();
    await toSheet(page);
    await soon(opens).toHaveLength(2);
    const region = page.getByRole('region', { name: 'The pieces, to scale' });
    expect(await region.innerText()).toContain('The neck opens at both shoulders for');
    expect(await checks(page).filter({ hasText: 'Does not work' }).count()).toBe(0);
  });

  it('that is wanted nowhere is offered by the check of the head, and made with one tap', async () => {
    await baby();
    await choose(page, 'design', 'Nowhere');
    await toSheet(page);
    await soon(opens).toEqual([]);
    await checks(page)
      .filter({ hasText: 'Head through the neck' })
      .getByRole('button', { name: /^Let the neck open/ })
      .click();
    await soon(opens).toHaveLength(2);
    const chosen = page.locator('#design fieldset', { hasText: 'Where the neck opens' }).locator('input:checked');
    expect(await chosen.count()).toBe(1);
    expect(await page.locator('#design').getByRole('radio', { name: 'Nowhere' }).isChecked()).toBe(false);
  });

  it('is as long as the maker says, and a cardigan has none', async () => {
    await write(page, 'body', { Chest: '94', Hip: '99' });
    await choose(page, 'design', 'Back');
    await write(page, 'design', { 'Opening, long': '12' });
    await toSheet(page);
    await soon(opens).toEqual(['opens 12']);
    await choose(page, 'design', 'Cardigan');
    await soon(opens).toEqual([]);
    expect(await page.locator('#design fieldset', { hasText: 'Where the neck opens' }).count()).toBe(0);
  });

  it('stays closed in a sheet that was kept before necks opened, which still shows', async () => {
    await write(page, 'body', { Chest: '94', Hip: '99' });
    await turnTo(page, 'keep');
    await page.getByRole('button', { name: 'Keep this sheet' }).click();
    await keptSheets(page).first().waitFor();
    await page.evaluate(() => {
      const kept = JSON.parse(localStorage.getItem('easewright-sheets-1')!);
      for (const { sheet, chosen } of kept.sheets) {
        delete sheet.design.opening;
        delete chosen.design.opening;
        for (const dimension of sheet.assembled) dimension.follows = {};
        for (const check of sheet.checks) delete check.comfort;
      }
      localStorage.setItem('easewright-sheets-1', JSON.stringify(kept));
    });
    await page.reload();
    await turnTo(page, 'keep');
    const row = page.getByRole('region', { name: 'Side by side' }).getByRole('row', { name: /^Where the neck opens/ });
    await soon(() => row.getByRole('cell').allInnerTexts()).toContain('Nowhere');
    await keptSheets(page).first().getByRole('button', { name: 'Take up its wishes' }).click();
    await turnTo(page, 'design');
    expect(await page.locator('#design').getByRole('radio', { name: 'Only if needed' }).isChecked()).toBe(true);
  });
});

inBrowser('a cuff of the maker’s own', () => {
  let page: Page;
  eachVisit((visitor) => (page = visitor));

  it('that no hand passes is made wider with one tap, and a vest has none', async () => {
    await write(page, 'body', { Chest: '94', Hip: '99' });
    await turnTo(page, 'design');
    await page.locator('#design summary', { hasText: 'Finer wishes' }).click();
    await write(page, 'design', { 'Cuff, across': '5' });
    await toSheet(page);
    await checks(page)
      .filter({ hasText: 'Hand through the cuff' })
      .getByRole('button', { name: /^Make the cuff .* wider$/ })
      .click();
    await soon(async () => Number(await field(page, 'design', 'Cuff, across').inputValue())).toBeGreaterThan(5);
    await soon(() => checks(page).filter({ hasText: 'Does not work' }).count()).toBe(0);
    await choose(page, 'design', 'Vest');
    await soon(() => field(page, 'design', 'Cuff, across').count()).toBe(0);
    await soon(() => pieces(page).getByRole('strong').allTextContents()).toContain('Armhole band, make 2');
  });
});
