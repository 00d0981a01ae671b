import { readFileSync } from 'node:fs';
import { Ajv2020 } from 'ajv/dist/2020.js';
import { afterAll, beforeAll, expect, it } from 'vitest';
import type { Page } from 'playwright-core';
import type { TargetSheet } from '#target-sheet';
import { inBrowser } from './support/chromium.ts';
import { soon } from './support/soon.ts';
import { quiet, servePage, type Served } from './support/open-page.ts';
import {
  HER,
  checks,
  choose,
  field,
  keptSheets,
  pieces,
  stored,
  strip,
  toSheet,
  turnTo,
  write,
} from './support/write.ts';

inBrowser('a newcomer’s whole way', () => {
  let served: Served;
  let page: Page;
  beforeAll(async () => {
    served = await servePage();
    page = await served.visit({ locale: 'en-US', viewport: { width: 360, height: 740 } });
  });
  afterAll(() => served.stop());

  it('begins empty, in the unit of the region, and offers an example', async () => {
    expect(await page.getByRole('radio', { name: 'inches' }).isChecked()).toBe(true);
    await page.getByRole('button', { name: 'Fill in the example' }).waitFor();
    expect(await strip(page).innerText()).toContain('Nothing to reckon with yet.');
  });

  it('takes measurements in fractions and shows estimates of the missing ones', async () => {
    await write(page, 'body', { Name: 'Me', ...HER });
    await page.locator('#body').getByRole('emphasis').first().waitFor();
    const weight = page.locator('#body li', { has: page.locator('#measure-weight') });
    expect(await weight.getByRole('emphasis').textContent()).toMatch(/^about \d+, \d+ to \d+ lb$/);
    expect(await field(page, 'body', 'Chest').inputValue()).toBe('37 1/2');
    await stored(page, 'body');
  });

  it('takes a sweater that fits and a bulky yarn', async () => {
    await write(page, 'garment', {
      'What you call it': 'The old blue one',
      'A Chest, across': '20',
      'C Shoulder to hem': '23 1/4',
      'J Sleeve': '18 3/4',
      'K Cuff, across': '3 1/2',
    });
    await stored(page, 'garment');
    await choose(page, 'yarn', 'crochet');
    await page.locator('#yarn').getByLabel('Weight on the label').selectOption('5 bulky');
    await soon(() => page.locator('#yarn').getByRole('status').last().innerText()).toContain('Reckoned with');
    await stored(page, 'yarn');
  });

  it('shows a sheet for a cropped, loose sweater', async () => {
    const before = await strip(page).innerText();
    await choose(page, 'design', 'Cropped');
    await choose(page, 'design', 'Loose');
    await soon(() => strip(page).innerText()).not.toBe(before);
    await toSheet(page);
    await soon(() => pieces(page).getByRole('strong').allTextContents()).toEqual([
      'Back, make one',
      'Front, make one',
      'Sleeve, make 2',
      'Neck band, make one',
    ]);
  });

  it('says that the head does not pass through a custom neck, and corrects it with one tap', async () => {
    await page.locator('#design summary', { hasText: 'Finer wishes' }).click();
    await choose(page, 'design', 'Nowhere');
    await write(page, 'design', { 'Neck, across': '5', 'Front neck, down': '1 1/2' });
    const failing = checks(page).filter({ hasText: 'Does not work' }).filter({ hasText: 'Head through the neck' });
    await failing.waitFor();
    await failing.getByRole('button', { name: /^Make the front neck .* deeper$/ }).click();
    await failing.waitFor({ state: 'detached' });
    expect(Number(await field(page, 'design', 'Front neck, down').inputValue())).toBeGreaterThan(1.5);
    expect(await page.evaluate(() => document.activeElement?.id)).toBe('checks-title');
  });

  it('keeps the sheet, and the API stores it', async () => {
    await write(page, 'design', { 'What you call it': 'Cropped, in bulky' });
    await turnTo(page, 'keep');
    await page.getByRole('button', { name: 'Keep this sheet' }).click();
    const kept = keptSheets(page).filter({ hasText: 'Cropped, in bulky' });
    await kept.getByText('Stored.', { exact: true }).waitFor();
    const { body } = await served.app.http.get('/v1/target-sheets').expect(200);
    expect(body.items.map(({ title }: { title: string }) => title)).toEqual(['Cropped, in bulky']);
  });

  it('prints on A4 and on Letter', async () => {
    for (const format of ['A4', 'Letter'] as const) {
      const pdf = await page.pdf({ format });
      expect(pdf.subarray(0, 5).toString()).toBe('%PDF-');
      expect(pdf.toString('latin1').match(/\/Type \/Page\b/g)?.length).toBeLessThanOrEqual(6);
    }
    await turnTo(page, 'body');
    await page.emulateMedia({ media: 'print' });
    await page.evaluate(() => window.dispatchEvent(new Event('beforeprint')));
    expect(await page.getByRole('heading', { level: 1, name: 'Cropped, in bulky' }).isVisible()).toBe(true);
    expect(await page.locator('#body').isVisible()).toBe(false);
    expect(await pieces(page).getByRole('img').first().isVisible()).toBe(true);
    await page.evaluate(() => window.dispatchEvent(new Event('afterprint')));
    await page.emulateMedia({ media: 'screen' });
    expect(await page.locator('#body').isVisible()).toBe(true);
  });

  it('prints from the browser’s own menu even if the leaf of the sheet was never open', async () => {
    const again = await page.context().newPage();
    await again.goto(served.address);
    await again.emulateMedia({ media: 'print' });
    await soon(async () => {
      await again.evaluate(() => window.dispatchEvent(new Event('beforeprint')));
      const count = await pieces(again).getByRole('img').count();
      await again.evaluate(() => window.dispatchEvent(new Event('afterprint')));
      return count;
    }).toBe(4);
    await again.close();
  });

  it('downloads JSON in inches that the published schema accepts', async () => {
    await turnTo(page, 'keep');
    const [download] = await Promise.all([
      page.waitForEvent('download'),
      page.getByRole('button', { name: 'Download JSON' }).first().click(),
    ]);
    expect(download.suggestedFilename()).toBe('cropped-in-bulky.json');
    const sheet = JSON.parse(readFileSync(await download.path(), 'utf8')) as TargetSheet;
    const { body: schema } = await served.app.http.get('/v1/schemas/target-sheet/1').expect(200);
    const validate = new Ajv2020({ strict: false }).compile(schema as object);
    expect(validate(sheet), JSON.stringify(validate.errors)).toBe(true);
    expect(sheet).toMatchObject({
      unit: 'in',
      title: 'Cropped, in bulky',
      design: { length: 'cropped', construction: 'drop-shoulder' },
    });
    // Loose is 100 to 150 mm of ease; its middle is 125 mm, 4.92 in.
    expect(sheet.design.ease.chosen).toBeCloseTo(125 / 25.4, 6);
    quiet(served);
  });
});
