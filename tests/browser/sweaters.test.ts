import { afterAll, beforeAll, expect, it } from 'vitest';
import type { Page } from 'playwright-core';
import { inBrowser } from './support/chromium.ts';
import { quiet, servePage, type Served } from './support/open-page.ts';
import { soon } from './support/soon.ts';
import { choose, field, pieces, storageStatus, stored, strip, toSheet, turnTo, write } from './support/write.ts';

inBrowser('sweaters that fit', () => {
  let served: Served;
  let page: Page;
  beforeAll(async () => {
    served = await servePage();
    page = await served.visit({ viewport: { width: 360, height: 740 } });
  });
  afterAll(() => served.stop());

  const design = () => page.locator('#design');
  const garment = () => page.locator('#garment');
  const ease = (name: string) => design().getByRole('radio', { name, exact: true });

  it('makes a whole sheet from one width of a sweater and nothing else', async () => {
    await write(page, 'garment', { 'A Chest, across': '50' });
    await soon(() => strip(page).innerText()).toContain('50 cm');
    await toSheet(page);
    expect(await pieces(page).count()).toBe(4);
    expect(await page.locator('#sheet').innerText()).not.toContain('Not given');
    expect(await ease('As the sweater').isChecked()).toBe(true);
    expect(await ease('As the sweaters I like').count()).toBe(0);
    expect(await design().getByRole('radio', { name: 'Regular', exact: true }).isChecked()).toBe(true);
  });

  it('shows on the leaf of the body what the sweater says of it', async () => {
    await turnTo(page, 'body');
    const chest = page.locator('#body li', { has: page.locator('#measure-chest-girth') });
    await soon(() => chest.getByRole('emphasis').innerText()).toMatch(/^about \d/);
  });

  it('keeps the length of a sweater that has one', async () => {
    await write(page, 'garment', { 'C Shoulder to hem': '58' });
    await turnTo(page, 'design');
    await soon(() => design().getByRole('radio', { name: 'As long as the sweater', exact: true }).count()).toBe(1);
    expect(await design().getByRole('radio', { name: 'As long as the sweater', exact: true }).isChecked()).toBe(true);
  });

  it('offers the ease of the sweaters she likes from two on', async () => {
    await turnTo(page, 'garment');
    await garment().getByRole('button', { name: 'Another one' }).click();
    await write(page, 'garment', { 'What you call it': 'The green one', 'A Chest, across': '52' });
    await garment().getByLabel('How it fits', { exact: true }).selectOption('loose');
    await choose(page, 'design', 'As the sweaters I like');
    await soon(() => design().innerText()).toMatch(
      /\+\d+(\.\d)? cm of ease, give or take \d+(\.\d)? cm: what your 2 sweaters have\./,
    );
    await turnTo(page, 'garment');
    await garment().getByLabel('Whom it fits').selectOption({ label: 'nobody: leave it out' });
    await turnTo(page, 'design');
    await design().getByText('This needs two sweaters').waitFor();
    await turnTo(page, 'garment');
    await garment().getByLabel('Whom it fits').selectOption({ label: 'me' });
  });

  it('asks at the measure that contradicts the tape, takes an answer, and takes it back', async () => {
    await write(page, 'body', { Chest: '88' });
    await turnTo(page, 'garment');
    await write(page, 'garment', { 'A Chest, across': '62' });
    await field(page, 'garment', 'What you call it').focus();
    const width = garment().locator('li', { has: page.locator('#flat-chest-width') });
    await width.getByText('larger than your tape says').waitFor();
    await width.getByRole('button', { name: 'It is right' }).click();
    await width.getByText('larger than your tape says').waitFor({ state: 'detached' });
    await field(page, 'garment', 'What you call it').focus();
    await width.getByRole('button', { name: 'Ask me again' }).click();
    await field(page, 'garment', 'What you call it').focus();
    await width.getByText('larger than your tape says').waitFor();
  });

  it('stores both sweaters, and the sheet made from them', async () => {
    await stored(page, 'garment');
    expect(await storageStatus(page, 'garment').innerText()).toContain('Stored.');
    const { body } = await served.app.http.get('/v1/garments').expect(200);
    expect(body.items.map(({ fits }: { fits: string | null }) => fits).sort()).toEqual(['loose', null]);
    await page.reload();
    await turnTo(page, 'design');
    await soon(() => ease('As the sweaters I like').isChecked()).toBe(true);
    quiet(served);
  });
});
