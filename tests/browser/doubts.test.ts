import { expect, it } from 'vitest';
import type { Page } from 'playwright-core';
import { inBrowser } from './support/chromium.ts';
import { eachVisit, type Served } from './support/open-page.ts';
import { soon } from './support/soon.ts';
import { choose, field, stored, strip, turnTo, write } from './support/write.ts';

inBrowser('impossible and unlikely values', () => {
  let served: Served;
  let page: Page;
  eachVisit((...at) => void ([page, served] = at));

  const row = (dimension: string) => page.locator(`#measure-${dimension}-why`);
  const beneath = (label: string) =>
    page
      .locator('form', { has: page.getByLabel(label, { exact: true }) })
      .locator('[id$="-below"] > div')
      .first();
  /** What the store refused so far. */
  const refused = (): string[] => {
    const all: string[] = [];
    page.on('response', (response) => response.status() >= 400 && all.push(response.url()));
    return all;
  };

  for (const [text, said, repair] of [
    [
      '17 1/2',
      'Chest: read 17.5 cm; a woman’s lies between 55 and 220 cm. Left out. Were they inches?',
      'It is 17 1/2 in',
    ],
    [
      '940',
      'Chest: read 940 cm; a woman’s lies between 55 and 220 cm. Left out. Were they millimetres?',
      'It is 940 mm',
    ],
    ['0', 'Chest: read 0 cm; a woman’s lies between 55 and 220 cm. Left out.', null],
    ['5 in', 'Chest: read 5 in; a woman’s lies between 21⅝ and 86⅝ in. Left out.', null],
  ] as const)
    it(`a chest of “${text}” is questioned in the unit it was entered in`, async () => {
      await choose(page, 'body', 'a woman');
      await write(page, 'body', { Chest: text });
      await field(page, 'body', 'Hip').focus();
      await soon(() => row('chest-girth').getByRole('paragraph').innerText()).toBe(said);
      const buttons = row('chest-girth').getByRole('button');
      expect(await buttons.allInnerTexts()).toEqual(repair === null ? [] : [repair]);
    });

  it('a chest in millimetres where centimetres are set is corrected with one tap', async () => {
    await write(page, 'body', { Chest: '940' });
    await field(page, 'body', 'Hip').focus();
    await row('chest-girth').getByRole('button', { name: 'It is 940 mm' }).click();
    expect(await field(page, 'body', 'Chest').inputValue()).toBe('940 mm');
    await soon(() => strip(page).innerText()).toMatch(/\d cm/);
  });

  it('a child’s chest in the wrong unit is questioned, and still used', async () => {
    await choose(page, 'body', 'a child');
    await write(page, 'body', { Chest: '22 1/2' });
    await field(page, 'body', 'Hip').focus();
    await soon(() => row('chest-girth').getByRole('paragraph').innerText()).toBe(
      'Chest: read 22.5 cm; a child’s lies between 40 and 160 cm. Were they inches?',
    );
    await row('chest-girth').getByRole('button', { name: 'It is right' }).click();
    await field(page, 'body', 'Hip').focus();
    await row('chest-girth').getByRole('button').waitFor({ state: 'detached' });
  });

  it('what the API rejects is not used in the computation either', async () => {
    const all = refused();
    await choose(page, 'body', 'a woman');
    await write(page, 'body', { Chest: '94', Height: '560', Weight: '600' });
    await stored(page, 'body');
    await field(page, 'body', 'Hip').focus();
    await soon(() => row('stature').getByRole('paragraph').innerText()).toMatch(/Left out\./);
    expect(await row('weight').getByRole('paragraph').innerText()).toMatch(/Left out\. Were they pounds\?$/);
    expect(all).toEqual([]);
  });

  it('a weight is questioned in the unit it was entered in', async () => {
    await choose(page, 'body', 'a man');
    await write(page, 'body', { Weight: '4' });
    await field(page, 'body', 'Hip').focus();
    await soon(() => row('weight').getByRole('paragraph').innerText()).toBe(
      'Weight: read 4 kg; a man’s lies between 25 and 350 kg. Left out.',
    );
  });

  it('a child of thirty is reported and left out', async () => {
    await choose(page, 'body', 'a child');
    await write(page, 'body', { 'Age in years': '30', Chest: '60' });
    await stored(page, 'body');
    expect(await beneath('Age in years').innerText()).toBe(
      'Read 30 years; a child’s age lies between 0 and 20. Left out.',
    );
    expect(await field(page, 'body', 'Age in years').getAttribute('aria-invalid')).toBe('true');
    const { body } = await served.app.http.get('/v1/bodies').expect(200);
    expect(body.items[0].age).toBeNull();
  });

  for (const [text, age] of [
    ['4 1/2', 4.5],
    ['4½', 4.5],
    ['4,5', 4.5],
    ['0', 0],
  ] as const)
    it(`an age of “${text}” is a number`, async () => {
      await choose(page, 'body', 'a child');
      await write(page, 'body', { 'Age in years': text, Name: 'The niece' });
      await stored(page, 'body');
      expect(await beneath('Age in years').innerText()).toMatch(/^Half years count/);
      const { body } = await served.app.http.get('/v1/bodies').expect(200);
      expect(body.items[0].age).toBe(age);
    });

  it('stitches are read in halves, and zero is no gauge', async () => {
    await write(page, 'yarn', { 'Stitches in 10 cm (4 in)': '18 1/2' });
    await soon(() => page.locator('#yarn').getByRole('status').last().innerText()).toContain('Reckoned with');
    await write(page, 'yarn', { 'Stitches in 10 cm (4 in)': '0' });
    await field(page, 'yarn', 'Yarn or swatch').focus();
    expect(await beneath('Stitches in 10 cm (4 in)').innerText()).toBe('Write a number above 0.');
    await write(page, 'yarn', { 'Stitches in 10 cm (4 in)': '18 x' });
    await field(page, 'yarn', 'Yarn or swatch').focus();
    expect(await beneath('Stitches in 10 cm (4 in)').innerText()).toMatch(/^“18 x” is not a number/);
  });

  it('metres without a fibre are reported', async () => {
    const taken = () => page.locator('#yarn').getByRole('status').last().innerText();
    await write(page, 'yarn', { 'Metres in 100 g': '200' });
    await soon(taken).toBe('Not known yet. Beside the metres, choose what it is mostly of.');
    await page.locator('#yarn').getByLabel('Mostly').selectOption('wool');
    await soon(taken).toMatch(/^Reckoned with .* 200 m per 100 g of wool/);
    // 1 yd = 0.9144 m exactly: 250 yd are 228.6 m.
    await write(page, 'yarn', { 'Metres in 100 g': '250 yd' });
    await soon(taken).toMatch(/228\.6 m per 100 g of wool/);
    expect(await beneath('Metres in 100 g').innerText()).toBe('= 229 m');
    await write(page, 'yarn', { 'Metres in 100 g': '20000' });
    await soon(taken).toBe('Metres in 100 g: that cannot be right. Until it is, an ordinary fabric stands in.');
    await write(page, 'yarn', { 'Metres in 100 g': '' });
    await soon(taken).toBe('Not known yet. Write one of these.');
    await write(page, 'yarn', { 'Metres in 100 g': '250 kg' });
    await field(page, 'yarn', 'Yarn or swatch').focus();
    expect(await beneath('Metres in 100 g').innerText()).toMatch(/^“250 kg” is not a number/);
  });

  for (const [text, repairs] of [
    ['5', ['It is 5 in']],
    ['500', []],
    ['0', []],
  ] as const)
    it(`a sweater ${text} cm wide is questioned at its field, and left out of the sheet and the API`, async () => {
      const all = refused();
      await write(page, 'garment', { 'A Chest, across': text, 'C Shoulder to hem': '60' });
      await field(page, 'garment', 'What you call it').focus();
      const below = page.locator('#flat-chest-width-below');
      await soon(() => below.getByRole('paragraph').innerText()).toBe('No sweater measures that here. Left out.');
      expect(await below.getByRole('button').allInnerTexts()).toEqual(repairs);
      await stored(page, 'garment');
      const { body } = await served.app.http.get('/v1/garments').expect(200);
      expect(body.items[0].measures.map(({ name }: { name: string }) => name)).toEqual(['shoulder-to-hem']);
      await write(page, 'body', { Chest: '94' });
      await turnTo(page, 'design');
      await page.getByRole('radio', { name: 'As long as the sweater', exact: true }).waitFor();
      expect(await page.getByRole('radio', { name: 'As the sweater', exact: true }).count()).toBe(0);
      expect(all).toEqual([]);
    });

  it('one impossible measurement does not suppress the questions about the others', async () => {
    await write(page, 'body', { Chest: '94' });
    await write(page, 'garment', { 'A Chest, across': '500', 'B Hem, across': '101' });
    await field(page, 'garment', 'What you call it').focus();
    await soon(() => page.locator('#flat-hem-width-below').getByRole('paragraph').innerText()).toBe(
      'Large. Measured all round?',
    );
  });

  it('a fabric that is far too thick is reported and left out, also for the layer beneath', async () => {
    const all = refused();
    await write(page, 'body', { Chest: '94' });
    await write(page, 'garment', { 'A Chest, across': '50', 'Thickness of its fabric': '300' });
    await choose(page, 'garment', 'something thicker than a shirt');
    await write(page, 'garment', { 'Its thickness': '90' });
    await field(page, 'garment', 'What you call it').focus();
    for (const label of ['Thickness of its fabric', 'Its thickness']) {
      expect(await beneath(label).innerText()).toBe('No fabric is so thick, or so thin. Left out.');
      expect(await field(page, 'garment', label).getAttribute('aria-invalid')).toBe('true');
    }
    await choose(page, 'design', 'As the sweater');
    await soon(() => strip(page).innerText()).toMatch(/\d cm/);
    await turnTo(page, 'garment');
    await stored(page, 'garment');
    expect(all).toEqual([]);
  });
});
