import { expect, it } from 'vitest';
import type { Page } from 'playwright-core';
import { inBrowser } from './support/chromium.ts';
import { eachVisit } from './support/open-page.ts';
import { soon } from './support/soon.ts';
import { choose, field, strip, toSheet, turnTo, write } from './support/write.ts';

inBrowser('sweaters that fit', () => {
  let page: Page;
  eachVisit((to) => void (page = to));

  const another = () => page.locator('#garment').getByRole('button', { name: 'Another one' }).click();

  it('one alone leads to a whole sheet, without a basis being chosen', async () => {
    await write(page, 'garment', { 'A Chest, across': '50', 'C Shoulder to hem': '60' });
    await soon(() => strip(page).innerText()).toMatch(/50 cm/);
    await turnTo(page, 'design');
    for (const label of ['As long as the sweater', 'As the sweater'])
      expect(await page.getByRole('radio', { name: label, exact: true }).isChecked()).toBe(true);
    await toSheet(page);
    expect(
      await page
        .locator('#sheet')
        .getByText(/no advice/i)
        .count(),
    ).toBe(0);
  });

  it('two offer the ease of those that she likes', async () => {
    await write(page, 'garment', { 'A Chest, across': '50' });
    await another();
    await write(page, 'garment', { 'A Chest, across': '52' });
    await choose(page, 'design', 'As the sweaters I like');
    await soon(() => page.locator('#design').innerText()).toMatch(
      /cm of ease, give or take .*: what your 2 sweaters have/,
    );
  });

  it('that contradict the tape are asked about, until she says that they are right', async () => {
    await write(page, 'body', { Chest: '110' });
    await write(page, 'garment', { 'A Chest, across': '44' });
    await page.locator('#garment').getByLabel('How it fits').selectOption('Classic');
    const question = page.locator('#flat-chest-width-below');
    await soon(() => question.innerText()).toMatch(/your own measures count/);
    await question.getByRole('button', { name: 'It is right' }).click();
    await soon(() => question.innerText()).not.toMatch(/your own measures count/);
  });

  it('that were made from a kept sheet tell how the yarn grows, for the yarn to take or leave', async () => {
    await write(page, 'body', { Chest: '94' });
    await turnTo(page, 'keep');
    await page.getByRole('button', { name: 'Keep this sheet' }).click();
    await write(page, 'garment', { 'A Chest, across': '60' });
    await page.locator('#garment').getByLabel('Made from a sheet kept here').selectOption({ index: 1 });
    await soon(() => page.locator('#garment').innerText()).toMatch(/it has grown \d+ ?% across/);
    const after = () =>
      page.locator('#yarn').getByRole('group', { name: 'Across' }).first().getByRole('textbox').last();
    await page.getByRole('button', { name: 'Reckon with that in the yarn that is open' }).click();
    await soon(() => after().inputValue()).toMatch(/^1\d\.\d/);
    await page.getByRole('button', { name: 'Undo' }).click();
    await soon(() => after().inputValue()).toBe('');
  });
});
