import { readFileSync } from 'node:fs';
import { parse } from 'csv-parse/sync';
import { afterAll, beforeAll, expect, it } from 'vitest';
import type { Page } from 'playwright-core';
import { inBrowser } from './support/chromium.ts';
import { soon } from './support/soon.ts';
import { quiet, servePage, type Served } from './support/open-page.ts';
import { choose, chooseBasis, field, keptSheets, strip, toSheet, turnTo, write } from './support/write.ts';

inBrowser('the sheet and its exports', () => {
  let served: Served;
  let page: Page;
  beforeAll(async () => {
    served = await servePage();
    page = await served.visit();
    await page.getByRole('button', { name: 'Fill in the example' }).click();
    await toSheet(page);
  });
  afterAll(() => served.stop());

  const measures = (title: string) => page.getByRole('heading', { name: title }).locator('..');
  const valueOf = async (title: string, name: string): Promise<string> =>
    (await measures(title)
      .locator('summary')
      .filter({ has: page.getByText(name, { exact: true }) })
      .locator('span')
      .nth(1)
      .textContent()) ?? '';
  const save = async (button: string): Promise<string> => {
    await turnTo(page, 'keep');
    const [download] = await Promise.all([
      page.waitForEvent('download'),
      page.getByRole('button', { name: button }).first().click(),
    ]);
    return readFileSync(await download.path(), 'utf8');
  };

  it('equals the API’s answer to the same inputs', async () => {
    await choose(page, 'design', 'Set-in');
    await turnTo(page, 'keep');
    await page.getByRole('button', { name: 'Keep this sheet' }).click();
    const kept = keptSheets(page).first();
    const before = JSON.parse(await save('Download JSON'));
    await kept.getByText('Stored.', { exact: true }).waitFor();
    const { body } = await served.app.http.get('/v1/target-sheets').expect(200);
    const { body: theirs } = await served.app.http.get(`/v1/target-sheets/${body.items[0].id}`).expect(200);
    const numbers = (sheet: typeof before) =>
      sheet.assembled.map(({ name, value }: { name: string; value: number }) => [name, value?.toFixed(6)]);
    expect(theirs.unit).toBe(before.unit);
    expect(numbers(theirs)).toEqual(numbers(before));
    expect(theirs.checks.map(({ check, verdict }: Record<string, string>) => [check, verdict])).toEqual(
      before.checks.map(({ check, verdict }: Record<string, string>) => [check, verdict]),
    );
  });

  it('is wider for a thicker yarn', async () => {
    const width = async () =>
      Number((await valueOf('The finished sweater, laid flat', 'Chest width')).replace(' cm', ''));
    await turnTo(page, 'sheet');
    const before = await width();
    const layers = field(page, 'yarn', 'Four layers, how high');
    await turnTo(page, 'yarn');
    const text = await layers.inputValue();
    await layers.fill('42');
    await turnTo(page, 'sheet');
    // From t = 6.5 to 10.5 mm: 2 × 4 mm on the flat width, shown to half a centimetre.
    await soon(width).toBeGreaterThanOrEqual(before + 0.5);
    await write(page, 'yarn', { 'Four layers, how high': text });
    await turnTo(page, 'sheet');
    await soon(width).toBe(before);
  });

  it('is based on the sweater that fits if that is chosen', async () => {
    await chooseBasis(page, 'the sweater, compared with the body');
    await choose(page, 'design', 'As the sweater');
    expect(await field(page, 'design', 'Wider than the sweater, all round').isVisible()).toBe(true);
    // The green one: 50.5 cm, t 2.5; the new one t 6.5: 50.5 + 2 × 0.4, and 0.5 for a stiff fabric: 51.8, shown as 52.
    await soon(() => valueOf('The finished sweater, laid flat', 'Chest width')).toBe('52 cm');
    await choose(page, 'design', 'Classic');
    await chooseBasis(page, 'the body alone');
  });

  it('takes the dimensions of a finished back and adjusts the other pieces', async () => {
    await choose(page, 'design', 'Drop shoulder');
    await turnTo(page, 'made');
    const planned = await page
      .locator('#made fieldset', { hasText: 'Back' })
      .locator('[id$="-below"]')
      .first()
      .innerText();
    const width = Number(/[\d.]+/.exec(planned)?.[0]);
    await page
      .locator('#made fieldset')
      .first()
      .getByRole('textbox', { name: 'Width', exact: true })
      .fill(String(width + 2));
    await page.locator('#made summary').click();
    const table = page.locator('#made table');
    await table.waitFor();
    // Model, section 10: panel + 20 mm makes the drop sleeve 10 mm shorter.
    await soon(() => table.locator('tr', { hasText: 'Sleeve: Sleeve length, whole' }).innerText()).toMatch(/−1 cm$/);
    await page.getByRole('button', { name: 'Clear all' }).click();
    await table.waitFor({ state: 'detached' });
    await page.getByRole('button', { name: 'Undo', exact: true }).click();
    await table.waitFor();
    await page.getByRole('button', { name: 'Clear all' }).click();
  });

  it('shows two sheets side by side', async () => {
    await choose(page, 'design', 'Long');
    await turnTo(page, 'keep');
    const table = page.getByRole('region', { name: 'Side by side' }).getByRole('table');
    await table.waitFor();
    await soon(() => table.innerText()).toMatch(/Length\s+Long\s+Cropped/);
    const text = await table.innerText();
    expect(text).toMatch(/Sleeves\s+Drop shoulder\s+Set-in/);
    expect(text).toMatch(/Centre back length.*−\d/);
    await page.locator('#keep').getByRole('button', { name: 'Take up its wishes' }).click();
    await turnTo(page, 'design');
    await soon(() => page.locator('#design').getByRole('radio', { name: 'Cropped' }).isChecked()).toBe(true);
  });

  it('exports CSV, a drawing and a text', async () => {
    const rows = parse(await save('Download CSV'), { columns: true }) as {
      piece: string;
      name: string;
      unit: string;
    }[];
    expect(rows.some(({ piece, name }) => piece === 'assembled' && name === 'chest-width')).toBe(true);
    expect(new Set(rows.map(({ unit }) => unit))).toEqual(new Set(['cm']));
    const drawing = await save('Download drawing (SVG)');
    expect(drawing).toMatch(/^<svg xmlns="http:\/\/www.w3.org\/2000\/svg"/);
    await turnTo(page, 'keep');
    await page.context().grantPermissions(['clipboard-read', 'clipboard-write']);
    await page.getByRole('button', { name: 'Copy as text' }).first().click();
    await page.getByText('Copied.', { exact: true }).waitFor();
    expect(await page.evaluate(() => navigator.clipboard.readText())).toMatch(/the finished garment, laid flat/i);
  });

  it('selects the text where the browser does not allow copying', async () => {
    await page.evaluate(() => Object.defineProperty(navigator, 'clipboard', { value: undefined, configurable: true }));
    await page.getByRole('button', { name: 'Copy as text' }).first().click();
    const text = page.getByRole('textbox', { name: 'The sheet as text' });
    expect(await text.inputValue()).toMatch(/the finished garment, laid flat/i);
    expect(await text.evaluate((it: HTMLTextAreaElement) => it.selectionEnd - it.selectionStart)).toBeGreaterThan(500);
  });

  it('overrides a rule, shows that, and restores it', async () => {
    await turnTo(page, 'design');
    const before = await strip(page).innerText();
    await page.locator('#design summary', { hasText: 'The rules behind the numbers' }).click();
    const rule = page.getByRole('textbox', { name: /^Fabric thickness for which an ease is said/ });
    await rule.fill('7');
    await soon(() => strip(page).innerText()).not.toBe(before);
    await page.getByRole('listitem').getByText('ordinary thickness: 7').waitFor();
    await rule.fill('900');
    expect(await rule.getAttribute('aria-invalid')).toBe('true');
    await soon(() => strip(page).innerText()).toBe(before);
    await rule.fill('');
  });

  it('shows a child’s cautions, and needs no measurement but the chest', async () => {
    await turnTo(page, 'body');
    await page.locator('#body').getByLabel('Which one').selectOption('The niece');
    await turnTo(page, 'sheet');
    await soon(() => page.getByRole('heading', { name: 'Take care' }).locator('..').innerText()).toMatch(/cord/i);
    quiet(served);
  });

  it('does not mention a body that is not entered', async () => {
    await turnTo(page, 'body');
    await page.locator('#body').getByRole('button', { name: 'Another one' }).click();
    await turnTo(page, 'sheet');
    await page.getByText('Write a chest, or a width of a sweater that fits').waitFor();
    await write(page, 'body', { Chest: '94' });
    await soon(() => strip(page).innerText()).toMatch(/\d cm/);
  });
});
