import { expect, it } from 'vitest';
import type { Page } from 'playwright-core';
import { inBrowser } from './support/chromium.ts';
import { soon } from './support/soon.ts';
import { eachVisit } from './support/open-page.ts';
import { choose, field, HER, stored, strip, toSheet, turnTo, wayTo, write } from './support/write.ts';

inBrowser('the fields of the page', () => {
  let page: Page;
  eachVisit((to) => void (page = to));

  const beneath = (id: string) => page.locator(`#${id}-below`).innerText();

  it('read fractions and commas, and show the other unit', async () => {
    await field(page, 'body', 'Chest').fill('94,5');
    expect(await beneath('measure-chest-girth')).toBe('= 37¼ in');
    await field(page, 'body', 'Hip').fill('38 1/2 in');
    expect(await beneath('measure-hip-girth')).toBe('= 98 cm');
  });

  it('keep their text unrounded when the unit is switched', async () => {
    await write(page, 'body', { Chest: '94,5', Hip: '100.25' });
    await toSheet(page);
    const width = await strip(page).innerText();
    await page.getByRole('radio', { name: 'inches' }).check();
    expect(await strip(page).innerText()).toMatch(/ in\n/);
    await turnTo(page, 'body');
    expect(await field(page, 'body', 'Chest').inputValue()).toBe('94,5');
    await field(page, 'body', 'Waist').fill('30 1/2');
    expect(await beneath('measure-waist-girth')).toBe('= 77.5 cm');
    await page.getByRole('radio', { name: 'centimetres' }).check();
    expect(await field(page, 'body', 'Waist').inputValue()).toBe('30 1/2');
    expect(await beneath('measure-waist-girth')).toBe('= 77.5 cm');
    await field(page, 'body', 'Waist').fill('');
    await soon(() => strip(page).innerText()).toBe(width);
  });

  it('read a retyped number in the chosen unit, and an edited one in its own', async () => {
    const waist = field(page, 'body', 'Waist');
    await waist.fill('76');
    await page.getByRole('radio', { name: 'inches' }).check();
    await waist.press('End');
    await waist.press('Backspace');
    await waist.pressSequentially('8');
    expect(await beneath('measure-waist-girth')).toBe('= 30¾ in');
    // Over the whole text; its first digit is the same.
    await waist.selectText();
    await waist.pressSequentially('7.5');
    expect(await beneath('measure-waist-girth')).toBe('= 19 cm');
    await page.getByRole('radio', { name: 'centimetres' }).check();
    await waist.selectText();
    await waist.pressSequentially('30');
    expect(await beneath('measure-waist-girth')).toBe('= 11¾ in');
  });

  it('read a pasted number in the chosen unit', async () => {
    await page.context().grantPermissions(['clipboard-read', 'clipboard-write']);
    const waist = field(page, 'body', 'Waist');
    await waist.fill('76');
    await page.getByRole('radio', { name: 'inches' }).check();
    await page.evaluate(() => navigator.clipboard.writeText('79'));
    await waist.selectText();
    await waist.press('Control+V');
    expect(await waist.inputValue()).toBe('79');
    expect(await beneath('measure-waist-girth')).toBe('= 200.5 cm');
  });

  for (const [text, understood] of [
    ['abc', /“abc” was read as a length, but /],
    ['1e9', /“1e9” was read as a length, but /],
    ['9999999', /more than 10 m/],
    ['Chest 94 Waist 78 Hip 102 Arm 43 Back 42 Neck 38', /longer than 40 characters/],
  ] as const)
    it(`say how they read “${text.slice(0, 12)}”, and the rest keeps working`, async () => {
      await write(page, 'body', { Chest: '94', Hip: text });
      await field(page, 'body', 'Chest').focus();
      await soon(() => page.locator('#measure-hip-girth-why').innerText()).toMatch(understood);
      expect(await field(page, 'body', 'Hip').getAttribute('aria-invalid')).toBe('true');
      expect(await field(page, 'body', 'Hip').inputValue()).toBe(text);
      await soon(() => strip(page).innerText()).toMatch(/\d cm/);
      await field(page, 'body', 'Hip').fill('');
      expect(await field(page, 'body', 'Hip').getAttribute('aria-invalid')).toBeNull();
    });

  it('leave an impossible value out, and say so', async () => {
    await write(page, 'body', { Chest: '94', Hip: '9 m' });
    await field(page, 'body', 'Chest').focus();
    const row = page.locator('#body li', { has: page.locator('#measure-hip-girth') });
    await soon(() => row.locator('#measure-hip-girth-why').innerText()).toMatch(
      /^Hip: read 900 cm; a woman’s lies between 50 and 250 cm/,
    );
  });

  it('question inches entered as centimetres, and one tap corrects them', async () => {
    await write(page, 'body', { Height: '168', Chest: '94', Waist: '76', Hip: '40' });
    await field(page, 'body', 'Chest').focus();
    const row = page.locator('#body li', { has: page.locator('#measure-hip-girth') });
    await row.getByRole('button', { name: 'It is 40 in' }).click();
    await row.getByRole('button').waitFor({ state: 'detached' });
    expect(await field(page, 'body', 'Hip').inputValue()).toBe('40');
    await soon(() => beneath('measure-hip-girth')).toBe('= 101.5 cm');
    expect(await page.evaluate(() => document.activeElement?.id)).toBe('measure-hip-girth');
  });

  it('do not question a confirmed value again', async () => {
    await write(page, 'body', { Height: '168', Chest: '94', Waist: '76', Hip: '49' });
    await field(page, 'body', 'Chest').focus();
    const row = page.locator('#body li', { has: page.locator('#measure-hip-girth') });
    await row.getByRole('button', { name: 'It is right' }).click();
    await field(page, 'body', 'Chest').focus();
    await field(page, 'body', 'Age in years').fill('40');
    expect(await row.getByRole('button').count()).toBe(0);
  });

  it('question a girth entered as a flat width', async () => {
    await write(page, 'body', { Chest: '94' });
    await write(page, 'garment', { 'A Chest, across': '101' });
    await field(page, 'garment', 'B Hem, across').focus();
    await page.locator('#garment').getByRole('button', { name: 'It is 50.5 cm' }).click();
    expect(await field(page, 'garment', 'A Chest, across').inputValue()).toBe('50.5');
  });

  it('show estimates of missing measurements, unless they are left open', async () => {
    await write(page, 'body', { Height: '168', Chest: '95', Hip: '100' });
    const guesses = page.locator('#body').getByRole('emphasis');
    await guesses.first().waitFor();
    await choose(page, 'body', 'stays open');
    await soon(() => guesses.count()).toBe(0);
    await stored(page, 'body');
    await page.reload();
    expect(await page.locator('#body').getByRole('radio', { name: 'stays open', exact: true }).isChecked()).toBe(true);
    await choose(page, 'body', 'is guessed');
    await guesses.first().waitFor();
  });

  it('name the measurement to take next, with a link to it', async () => {
    const next = page.getByRole('complementary', { name: 'Worth taking next' });
    await field(page, 'body', 'Height').fill('168');
    const link = next.getByRole('link');
    await soon(() => link.innerText()).toBe('Chest');
    await field(page, 'body', 'Chest').fill('94');
    await soon(() => next.innerText()).toMatch(/sure to ± [\d.]+ cm instead of ± [\d.]+ cm/);
    const name = await link.innerText();
    expect(name).not.toBe('Chest');
    await link.click();
    expect(await field(page, 'body', name).evaluate((it) => it === document.activeElement)).toBe(true);
  });

  it('show less room as the four layers grow', async () => {
    await write(page, 'body', { Chest: '94', Hip: '98' });
    const rows = async (): Promise<string[]> => page.locator('#yarn figure tbody tr').allTextContents();
    await turnTo(page, 'yarn');
    await page.locator('#yarn figure summary').click();
    await field(page, 'yarn', 'Four layers, how high').fill('28');
    await soon(async () => (await rows())[1]).toMatch(/^yours7 mm/);
    const text = await page.locator('#yarn figure desc').textContent();
    // t = 7 takes 4(7 − 3) = 16 mm more of the same flat width than t = 3.
    const [ordinary, yours] = [...(text ?? '').matchAll(/leaves ([\d.]+) cm/g)].map((found) => Number(found[1]));
    expect((ordinary ?? 0) - (yours ?? 0)).toBeCloseTo(1.6, 0);
  });

  it('can be used by keyboard alone', async () => {
    const active = (): Promise<string> => page.evaluate(() => document.activeElement?.id ?? '');
    await page.keyboard.press('Tab');
    expect(await page.evaluate(() => document.activeElement?.textContent)).toBe('Straight to the sheet');
    for (let i = 0; i < 80 && (await active()) !== 'measure-chest-girth'; i++) await page.keyboard.press('Tab');
    expect(await active()).toBe('measure-chest-girth');
    await page.keyboard.type('94');
    await soon(() => strip(page).innerText()).toMatch(/\d cm/);
    await wayTo(page, 'design').focus();
    await page.keyboard.press('Enter');
    // The way leads into the leaf: the next stop is its first field.
    await page.keyboard.press('Tab');
    expect(await field(page, 'design', 'What you call it').evaluate((it) => it === document.activeElement)).toBe(true);
    await toSheet(page);
    const radio = page.locator('#design').getByRole('radio', { name: 'Drop shoulder' });
    await radio.focus();
    await page.keyboard.press('ArrowDown');
    expect(await page.locator('#design').getByRole('radio', { name: 'Squared drop' }).isChecked()).toBe(true);
    const first = page.locator('#sheet summary', { hasText: 'Chest width' }).first();
    await first.focus();
    await page.keyboard.press('Enter');
    await page.locator('#sheet details[open]', { hasText: 'Chest width' }).getByRole('table').waitFor();
  });

  it('show the terms of a dimension, which add up', async () => {
    await write(page, 'body', { ...HER });
    await page.getByRole('radio', { name: 'centimetres' }).check();
    await choose(page, 'design', 'Set-in');
    const measure = page.locator('#sheet details', { hasText: 'Chest width' }).first();
    await measure.locator('summary').click();
    const number = (text: string): number => Number(text.replace('−', '-').replace(' cm', ''));
    const terms = await measure.locator('tbody td:nth-child(2)').allTextContents();
    const total = number((await measure.locator('tfoot td').first().textContent())!);
    // Each is shown to a tenth of a millimetre.
    expect(terms.map(number).reduce((sum, term) => sum + term, 0)).toBeCloseTo(total, 1);
    expect(terms.length).toBeGreaterThan(1);
  });
});
