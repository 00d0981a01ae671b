import { expect, it } from 'vitest';
import type { Page } from 'playwright-core';
import { inBrowser } from './support/chromium.ts';
import { soon } from './support/soon.ts';
import { eachVisit } from './support/open-page.ts';
import { checks, choose, field, keptSheets, toSheet, turnTo, write } from './support/write.ts';

inBrowser('undo', () => {
  let page: Page;
  eachVisit((to) => void (page = to));

  const undo = () => page.getByRole('button', { name: 'Undo', exact: true }).click();
  const chosen = (part: string, label: string) =>
    page.locator(`#${part}`).getByRole('radio', { name: label, exact: true }).isChecked();
  const wished = (label: string) => field(page, 'design', label).inputValue();
  const finer = () => page.locator('#design summary', { hasText: 'Finer wishes' }).click();
  /** A neck of her own that the first remedy of the sheet makes deeper in front. */
  const mendNeck = async () => {
    await write(page, 'body', { Chest: '94', Hip: '99' });
    await turnTo(page, 'design');
    await finer();
    await choose(page, 'design', 'Nowhere');
    await write(page, 'design', { 'Neck, across': '12', 'Front neck, down': '4' });
    await toSheet(page);
    await checks(page)
      .getByRole('button', { name: /^Make the front neck .* deeper$/ })
      .first()
      .click();
    await soon(() => wished('Front neck, down')).not.toBe('4');
  };

  it('of a remedy restores what that changed, and nothing entered since', async () => {
    await mendNeck();
    await write(page, 'design', { 'What you call it': 'For the autumn', 'Neck band, deep': '3' });
    await choose(page, 'design', 'Loose');
    await choose(page, 'design', 'Raglan');
    await undo();
    expect(await wished('Front neck, down')).toBe('4');
    expect(await wished('Neck, across')).toBe('12');
    expect(await wished('What you call it')).toBe('For the autumn');
    expect(await wished('Neck band, deep')).toBe('3');
    expect(await chosen('design', 'Loose')).toBe(true);
    expect(await chosen('design', 'Raglan')).toBe(true);
  });

  it('of a remedy leaves a number that was changed again since', async () => {
    await mendNeck();
    await write(page, 'design', { 'Front neck, down': '11' });
    await undo();
    expect(await wished('Front neck, down')).toBe('11');
  });

  it('of restored choices leaves what was entered since', async () => {
    await write(page, 'body', { Chest: '94', Hip: '99' });
    await choose(page, 'design', 'Cropped');
    await turnTo(page, 'keep');
    await page.getByRole('button', { name: 'Keep this sheet' }).click();
    await choose(page, 'design', 'Long');
    await choose(page, 'design', 'V');
    await choose(page, 'design', 'Loose');
    await turnTo(page, 'keep');
    await page.getByRole('button', { name: 'Take up its wishes' }).click();
    await turnTo(page, 'design');
    expect(await chosen('design', 'Cropped')).toBe(true);
    expect(await chosen('design', 'Round')).toBe(true);
    await choose(page, 'design', 'Boat');
    await write(page, 'design', { 'What you call it': 'For the autumn' });
    await undo();
    expect(await chosen('design', 'Long')).toBe(true);
    expect(await chosen('design', 'Loose')).toBe(true);
    expect(await chosen('design', 'Boat')).toBe(true);
    expect(await wished('What you call it')).toBe('For the autumn');
  });

  it('of a custom ease leaves a number that was entered since', async () => {
    await write(page, 'body', { Chest: '94', Hip: '99' });
    await choose(page, 'design', 'My own number');
    await write(page, 'design', { 'Ease round the chest': '8' });
    await turnTo(page, 'keep');
    await page.getByRole('button', { name: 'Keep this sheet' }).click();
    await write(page, 'design', { 'Ease round the chest': '' });
    await choose(page, 'design', 'Loose');
    await turnTo(page, 'keep');
    await page.getByRole('button', { name: 'Take up its wishes' }).click();
    await write(page, 'design', { 'Ease round the chest': '9' });
    await undo();
    expect(await chosen('design', 'My own number')).toBe(true);
    expect(await wished('Ease round the chest')).toBe('9');
  });

  it('of the example leaves what was entered since, and an entry of it that was changed', async () => {
    await choose(page, 'design', 'Boat');
    await turnTo(page, 'body');
    await page.getByRole('button', { name: 'Fill in the example' }).click();
    await soon(() => field(page, 'body', 'Name').inputValue()).toBe('The maker');
    await write(page, 'body', { Name: 'Aunt', Chest: '101' });
    await write(page, 'design', { 'What you call it': 'For the autumn' });
    await choose(page, 'design', 'Long');
    await undo();
    expect(await wished('What you call it')).toBe('For the autumn');
    expect(await chosen('design', 'Long')).toBe(true);
    expect(await chosen('design', 'Boat')).toBe(true);
    await turnTo(page, 'body');
    expect(await field(page, 'body', 'Name').inputValue()).toBe('Aunt');
    expect(await field(page, 'body', 'Chest').inputValue()).toBe('101');
    expect(await page.locator('#body').getByLabel('Which one').count()).toBe(0);
    await turnTo(page, 'yarn');
    expect(await field(page, 'yarn', 'Yarn or swatch').inputValue()).toBe('');
  });

  it('of clearing the finished pieces leaves the one entered since', async () => {
    await write(page, 'body', { Chest: '94', Hip: '99' });
    await turnTo(page, 'made');
    const width = field(page, 'made', 'Width').first();
    const other = page.locator('#made').getByRole('textbox').nth(1);
    await width.fill('52');
    await other.fill('60');
    await page.getByRole('button', { name: 'Clear all' }).click();
    await width.fill('53');
    await undo();
    expect(await width.inputValue()).toBe('53');
    expect(await other.inputValue()).toBe('60');
  });

  /** What has the focus, in words. */
  const focused = () =>
    page.evaluate(() => {
      const { activeElement: it, body } = document;
      return it === null || it === body ? 'nothing' : it.getAttribute('aria-label') || it.textContent;
    });
  const close = () => page.getByRole('button', { name: 'Close this line' }).click();
  const keepOne = async (length: string) => {
    await choose(page, 'design', length);
    await turnTo(page, 'keep');
    await page.getByRole('button', { name: 'Keep this sheet' }).click();
  };

  it('returns the focus to the checks, also when the notice is closed', async () => {
    await mendNeck();
    await undo();
    expect(await focused()).toBe('Will it go on, will it stay on');
    await checks(page)
      .getByRole('button', { name: /^Make the front neck .* deeper$/ })
      .first()
      .click();
    await close();
    expect(await focused()).toBe('Will it go on, will it stay on');
  });

  it('returns the focus to the open leaf if another was opened since', async () => {
    await mendNeck();
    await turnTo(page, 'yarn');
    await undo();
    expect(await focused()).toBe('The yarn');
  });

  it('returns the focus to the pressed button if that is still there', async () => {
    await write(page, 'body', { Chest: '94', Hip: '99' });
    await keepOne('Cropped');
    await page.getByRole('button', { name: 'Take up its wishes' }).click();
    await undo();
    expect(await focused()).toBe('Take up its wishes');
  });

  it('of removing a kept sheet always has a place for the focus', async () => {
    await write(page, 'body', { Chest: '94', Hip: '99' });
    await keepOne('Cropped');
    await keepOne('Long');
    const kept = keptSheets(page);
    for (const left of [1, 0]) {
      await kept.getByRole('button', { name: 'Remove' }).first().click();
      await soon(() => kept.count()).toBe(left);
      expect(await focused()).toBe('Kept sheets');
    }
    await undo();
    await soon(() => kept.count()).toBe(1);
    expect(await focused()).toBe('Kept sheets');
  });

  it('of clearing or restoring always has a place for the focus', async () => {
    await write(page, 'body', { Chest: '94', Hip: '99' });
    await turnTo(page, 'made');
    await field(page, 'made', 'Width').first().fill('52');
    await page.getByRole('button', { name: 'Clear all' }).click();
    expect(await focused()).toBe('Pieces you have finished');
    await undo();
    expect(await focused()).toBe('Pieces you have finished');
    await turnTo(page, 'design');
    await page.locator('#design summary', { hasText: 'The rules behind the numbers' }).click();
    await page.getByRole('textbox', { name: /^Fabric thickness for which an ease is said/ }).fill('7');
    await page.getByRole('button', { name: 'Put back' }).click();
    expect(await focused()).toBe('What you want to make');
    await undo();
    expect(await focused()).toBe('What you want to make');
    expect(await page.getByRole('listitem').getByText('ordinary thickness: 7').isVisible()).toBe(true);
  });
});
