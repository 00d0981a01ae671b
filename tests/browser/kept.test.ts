import { afterAll, beforeAll, expect, it } from 'vitest';
import type { Page } from 'playwright-core';
import { inBrowser } from './support/chromium.ts';
import { soon } from './support/soon.ts';
import { quiet, servePage, type Served } from './support/open-page.ts';
import { choose, keptSheets, turnTo, write } from './support/write.ts';

const NAME = 'Cropped sweater in bulky wool, crocheted';
const DAY_AND_TIME = /of \d\d?\/\d\d?\/\d{4}, \d\d?:\d\d/;

inBrowser('kept sheets', () => {
  let served: Served;
  let page: Page;
  beforeAll(async () => {
    served = await servePage();
    page = await served.visit();
    await page.getByRole('button', { name: 'Fill in the example' }).click();
    await page.getByText('The example was filled in.').waitFor();
  });
  afterAll(() => served.stop());

  const kept = () => keptSheets(page);
  const keep = async () => {
    await turnTo(page, 'keep');
    const before = await kept().count();
    await page.getByRole('button', { name: 'Keep this sheet' }).click();
    await soon(() => kept().count()).toBe(before + 1);
    await kept().first().getByText('Stored.').waitFor();
  };
  const side = () => page.getByRole('region', { name: 'Side by side' });
  const options = async () =>
    (await side().getByRole('combobox', { name: 'and that' }).locator('option').allTextContents()).slice(1);

  it('show only the day while there is one', async () => {
    await keep();
    expect(await kept().locator('h4').innerText()).toMatch(new RegExp(`^${NAME} of \\d+/\\d+/\\d{4}$`));
    expect(await options()).toEqual([NAME]);
  });

  it('of the same name and day show their time, and the choices that differ', async () => {
    for (const ease of ['Classic', 'Oversized']) {
      await choose(page, 'design', ease);
      await keep();
    }
    const titles = await kept().locator('h4').allInnerTexts();
    for (const [i, ease] of ['Oversized', 'Classic', 'Loose'].entries()) {
      expect(titles[i]).toMatch(new RegExp(`^${NAME} Ease: ${ease} \\+[\\d.]+ cm, of `));
      expect(titles[i]).toMatch(DAY_AND_TIME);
      // What they have in common does not tell them apart.
      expect(titles[i]).not.toContain('Length');
    }
    const listed = await options();
    expect(new Set(listed).size).toBe(3);
    expect(listed[1]).toMatch(new RegExp(`^${NAME}, Ease: Classic \\+[\\d.]+ cm, \\d`));
  });

  it('stand side by side under their names', async () => {
    const table = side().locator('table');
    const [newest = '', second = ''] = await options();
    expect((await table.locator('thead th').allInnerTexts()).slice(1)).toEqual([
      'What is on the page now',
      newest,
      'Difference',
    ]);
    await side().getByRole('combobox', { name: 'This' }).selectOption(second);
    await soon(async () => (await table.locator('thead th').allInnerTexts()).slice(1, 3)).toEqual([second, newest]);
  });

  it('differ by the difference of the two values as shown, in both units', async () => {
    const number = (text: string): number => {
      const [, sign, whole, part] = /^([−+]?)(\d*\.?\d*)\s*([⅛¼⅜½⅝¾⅞]?) /.exec(text) ?? [];
      const size = Number(whole) + (part ? ('⅛¼⅜½⅝¾⅞'.indexOf(part) + 1) / 8 : 0);
      return sign === '−' ? -size : size;
    };
    for (const tape of ['inches', 'centimetres']) {
      await turnTo(page, 'body');
      await page.getByRole('radio', { name: tape }).check();
      await turnTo(page, 'keep');
      let compared = 0;
      for (const length of [0, 1, 2]) {
        await side()
          .getByRole('combobox', { name: 'This' })
          .selectOption({ index: length + 1 });
        const rows = await side()
          .locator('tbody tr')
          .evaluateAll((all) =>
            all.map((row) => [...row.querySelectorAll('td')].map(({ textContent }) => textContent ?? '')),
          );
        for (const [one = '', other = '', difference = ''] of rows) {
          if (!/\d/.test(difference)) continue;
          compared++;
          expect(number(difference), `${one} | ${other} | ${difference}`).toBeCloseTo(number(other) - number(one), 9);
        }
      }
      expect(compared).toBeGreaterThan(30);
    }
  });

  it('say that their inputs have changed, as soon as the change is stored', async () => {
    expect(await kept().getByText('Since then changed').count()).toBe(0);
    await write(page, 'body', { Waist: '85' });
    await turnTo(page, 'keep');
    await soon(() => kept().getByText('Since then changed: the body.').count()).toBe(3);
    quiet(served);
  });
});
