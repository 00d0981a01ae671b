import { expect, it } from 'vitest';
import type { Page } from 'playwright-core';
import { inBrowser } from './support/chromium.ts';
import { soon } from './support/soon.ts';
import { eachVisit, type Served } from './support/open-page.ts';
import { choose, field, storageStatus, stored, strip, toSheet, turnTo, write } from './support/write.ts';

/** Takes the connection away, once all that the page asked for has come: what was on its way would be lost with a complaint. */
async function goOffline(page: Page): Promise<void> {
  await page.waitForLoadState('networkidle');
  await page.context().setOffline(true);
}

inBrowser('entered data is stored', () => {
  let served: Served;
  let page: Page;
  eachVisit((...at) => void ([page, served] = at));

  const where = (part: string) => storageStatus(page, part).innerText();
  const bodies = async () => (await served.app.http.get('/v1/bodies').expect(200)).body.items;

  it('survives a reload character for character, even if it cannot be read', async () => {
    await write(page, 'body', { Name: 'Aunt', Chest: '94,5', Waist: 'about 80' });
    await choose(page, 'design', 'Raglan');
    await page.reload();
    await turnTo(page, 'body');
    expect(await field(page, 'body', 'Chest').inputValue()).toBe('94,5');
    expect(await field(page, 'body', 'Waist').inputValue()).toBe('about 80');
    await turnTo(page, 'design');
    expect(await page.locator('#design').getByRole('radio', { name: 'Raglan', exact: true }).isChecked()).toBe(true);
    await soon(() => strip(page).innerText()).toMatch(/\d cm/);
  });

  it('is sent to the API with its text, unit and day', async () => {
    await write(page, 'body', { Name: 'Aunt', Chest: '37 1/2 in', Waist: '80,5' });
    await stored(page, 'body');
    const [body] = await bodies();
    expect(body).toMatchObject({ title: 'Aunt', figure: 'woman' });
    expect(body.measures).toMatchObject([
      { name: 'chest-girth', text: '37 1/2 in', how: 'home' },
      { name: 'waist-girth', text: '80,5', unit: 'cm', takenAt: expect.stringMatching(/^\d{4}-\d\d-\d\d$/) },
    ]);
  });

  it('can be edited offline, says so, and is sent by itself later', async () => {
    await write(page, 'body', { Chest: '94' });
    await stored(page, 'body');
    await goOffline(page);
    await write(page, 'body', { Hip: '99' });
    await soon(() => where('body')).toMatch(/The store cannot be reached/);
    expect(await strip(page).innerText()).toMatch(/\d cm/);
    await page.context().setOffline(false);
    await stored(page, 'body');
    expect((await bodies())[0].measures).toHaveLength(2);
  });

  it('keeps working where a module cannot be loaded, and loads it when the connection is back', async () => {
    await page.context().setOffline(true);
    await turnTo(page, 'send');
    await write(page, 'body', { Chest: '94' });
    await soon(() => where('body')).toMatch(/The store cannot be reached/);
    expect(await field(page, 'body', 'Chest').inputValue()).toBe('94');
    await turnTo(page, 'sheet');
    expect(await page.getByRole('heading', { name: 'How it comes out' }).isVisible()).toBe(true);
    await page.context().setOffline(false);
    await soon(() => strip(page).innerText()).toMatch(/\d cm/);
    await toSheet(page);
  });

  it('survives a server that stops and comes back', async () => {
    await page.route('**/v1/**', (route) => route.abort('connectionrefused'));
    await write(page, 'body', { Chest: '94' });
    await soon(() => where('body')).toMatch(/The store cannot be reached/);
    await page.reload();
    expect(await field(page, 'body', 'Chest').inputValue()).toBe('94');
    await page.unroute('**/v1/**');
    await page.evaluate(() => window.dispatchEvent(new Event('online')));
    await stored(page, 'body');
  });

  it('takes over the changes of another device, and asks about conflicts', async () => {
    await write(page, 'body', { Name: 'Aunt', Chest: '94' });
    await stored(page, 'body');
    const phone = await served.visit();
    await soon(() => field(phone, 'body', 'Chest').inputValue()).toBe('94');
    await field(phone, 'body', 'Chest').fill('95');
    await stored(phone, 'body');
    await page.reload();
    await soon(() => field(page, 'body', 'Chest').inputValue()).toBe('95');

    await goOffline(phone);
    await field(phone, 'body', 'Chest').fill('96');
    await field(page, 'body', 'Chest').fill('97');
    await stored(page, 'body');
    await phone.context().setOffline(false);
    await phone.getByText('Changed here and somewhere else.').waitFor();
    expect(await field(phone, 'body', 'Chest').inputValue()).toBe('96');
    await phone.getByRole('button', { name: 'Take the other' }).click();
    expect(await field(phone, 'body', 'Chest').inputValue()).toBe('97');
    await stored(phone, 'body');
    await phone.context().close();
  });

  it('keeps the version of this browser if that is chosen', async () => {
    await write(page, 'body', { Chest: '94' });
    await stored(page, 'body');
    const [{ id }] = await bodies();
    const measures = [{ name: 'chest-girth', text: '90', unit: 'cm' }];
    await goOffline(page);
    await served.app.http.put(`/v1/bodies/${id}`).set('If-Match', '"1"').send({ measures }).expect(200);
    await field(page, 'body', 'Chest').fill('96');
    await page.context().setOffline(false);
    await page.getByRole('button', { name: 'Keep what is here' }).click();
    await stored(page, 'body');
    expect((await bodies())[0].measures[0].text).toBe('96');
  });

  it('asks about a body that was deleted elsewhere, and loses nothing', async () => {
    await write(page, 'body', { Chest: '94' });
    await stored(page, 'body');
    await served.empty();
    await page.reload();
    await page.getByText('Removed from the store somewhere else.').waitFor();
    expect(await field(page, 'body', 'Chest').inputValue()).toBe('94');
    await page.getByRole('button', { name: 'Keep what is here' }).click();
    await stored(page, 'body');
    expect(await bodies()).toHaveLength(1);
  });

  it('keeps several bodies, removes one, and restores it', async () => {
    await write(page, 'body', { Name: 'Aunt', Chest: '94' });
    await stored(page, 'body');
    await page.locator('#body').getByRole('button', { name: 'Another one' }).click();
    await write(page, 'body', { Name: 'Niece' });
    await choose(page, 'body', 'a child');
    await write(page, 'body', { Chest: '62' });
    await stored(page, 'body');
    expect(await bodies()).toHaveLength(2);
    await page.locator('#body').getByRole('button', { name: 'Remove' }).click();
    expect(await field(page, 'body', 'Name').inputValue()).toBe('Aunt');
    await soon(async () => (await bodies()).length).toBe(1);
    await page.getByText('“Niece” was removed.').waitFor();
    await page.getByRole('button', { name: 'Undo', exact: true }).click();
    expect(await field(page, 'body', 'Name').inputValue()).toBe('Niece');
    expect(await field(page, 'body', 'Chest').inputValue()).toBe('62');
    await soon(async () => (await bodies()).length).toBe(2);
  });

  it('says why the API rejected a yarn, and stores it once it is corrected', async () => {
    await write(page, 'yarn', { 'Four layers, how high': '26' });
    await stored(page, 'yarn');
    await page.locator('#yarn summary', { hasText: 'Washing and hanging' }).click();
    const along = page.locator('#yarn fieldset', { hasText: 'Along' }).first();
    await along.getByRole('textbox', { name: 'before' }).fill('10');
    await along.getByRole('textbox', { name: 'after' }).fill('16');
    await soon(() => where('yarn')).toMatch(/The store did not take it: .*0\.5/);
    await along.getByRole('textbox', { name: 'after' }).fill('10.6');
    await stored(page, 'yarn');
    const { body } = await served.app.http.get('/v1/fabrics').expect(200);
    expect(body.items[0].growth.along).toBeCloseTo(0.06, 9);
  });

  it('loads the example, and undoes that', async () => {
    await page.getByRole('button', { name: 'Fill in the example' }).click();
    await stored(page, 'body');
    await stored(page, 'yarn');
    expect(await bodies()).toHaveLength(2);
    await page.getByRole('button', { name: 'Undo', exact: true }).click();
    await turnTo(page, 'body');
    await page.getByRole('button', { name: 'Fill in the example' }).waitFor();
    await soon(async () => (await bodies()).length).toBe(0);
  });

  it('loads the example only once, on a second tap or another device too', async () => {
    const load = page.getByRole('button', { name: 'Fill in the example' });
    const below = page.locator('#body');
    const top = (await below.boundingBox())?.y;
    await load.evaluate((it: HTMLButtonElement) => {
      it.focus();
      it.click();
      it.click();
    });
    await page.getByRole('link', { name: 'Look at its sheet' }).waitFor();
    expect(await load.count()).toBe(0);
    expect((await below.boundingBox())?.y).toBe(top);
    expect(await page.evaluate(() => document.activeElement?.textContent)).toContain('The example is filled in.');
    await stored(page, 'yarn');
    await stored(page, 'body');
    const names = (on: Page) =>
      on
        .locator('#body')
        .getByLabel('Which one')
        .locator('option')
        .allTextContents()
        .then((all) => all.sort());
    expect(await names(page)).toEqual(['The maker', 'The niece']);

    const phone = await served.visit();
    await soon(() => names(phone)).toEqual(['The maker', 'The niece']);
    await phone.getByRole('button', { name: 'Fill in the example' }).click();
    await phone.getByText('The example was filled in.').waitFor();
    expect(await names(phone)).toEqual(['The maker', 'The niece']);
    expect(await bodies()).toHaveLength(2);
    await phone.context().close();
  });
});
