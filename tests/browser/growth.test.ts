import { it } from 'vitest';
import type { Page } from 'playwright-core';
import { inBrowser } from './support/chromium.ts';
import { eachVisit } from './support/open-page.ts';
import { soon } from './support/soon.ts';
import { turnTo, write } from './support/write.ts';

inBrowser('a sweater that was made from a kept sheet', () => {
  let page: Page;
  eachVisit((to) => void (page = to));

  it('tells how its yarn grows, for the yarn to take or to leave', async () => {
    await write(page, 'body', { Chest: '94' });
    await turnTo(page, 'keep');
    await page.getByRole('button', { name: 'Keep this sheet' }).click();
    await write(page, 'garment', { 'A Chest, across': '60' });
    const garment = page.locator('#garment');
    await garment.getByLabel('Made from a sheet kept here').selectOption({ index: 1 });
    await soon(() => garment.innerText()).toMatch(/it has grown \d+\s?% across/);
    await turnTo(page, 'yarn');
    await page.locator('#yarn summary', { hasText: 'wash' }).click();
    const after = page.locator('#yarn').getByRole('group', { name: 'Across' }).first().getByRole('textbox').last();
    await turnTo(page, 'garment');
    await page.getByRole('button', { name: 'Use this growth for the yarn that is open' }).click();
    await turnTo(page, 'yarn');
    await soon(() => after.inputValue()).toMatch(/^1\d\.\d/);
    await page.getByRole('button', { name: 'Undo' }).click();
    await soon(() => after.inputValue()).toBe('');
  });
});
