/**
 * The page's figures, reported and never asserted: weight of the first load, what a key costs with the CPU slowed four times,
 * layout shift while typing. Builds the page and serves its files by itself; needs Chromium.
 * Run: node bench/page.bench.mjs
 */
import { createReadStream, existsSync, mkdtempSync, readFileSync, rmSync } from 'node:fs';
import { createServer } from 'node:http';
import { tmpdir } from 'node:os';
import { extname, join } from 'node:path';
import { gzipSync } from 'node:zlib';
import { chromium } from 'playwright-core';
import { build } from 'vite';

const BROWSER = [process.env.CHROMIUM ?? '', '/usr/bin/chromium'].find((place) => place !== '' && existsSync(place));
const SLOWER = 4;
const KEYS = 60;
/** Somebody who types two figures a second. */
const BETWEEN_MS = 500;
const TYPES = { '.html': 'text/html', '.js': 'text/javascript', '.css': 'text/css', '.svg': 'image/svg+xml' };

const folder = mkdtempSync(join(tmpdir(), 'easewright-bench-'));
process.env.NODE_ENV = 'production';
await build({
  configFile: 'apps/web/vite.config.ts',
  root: 'apps/web',
  logLevel: 'error',
  build: { outDir: folder, emptyOutDir: true },
});
const server = createServer((request, response) => {
  const path = new URL(request.url, 'http://bench').pathname;
  const file = join(folder, path === '/' ? 'index.html' : path);
  if (!existsSync(file)) return response.writeHead(503).end();
  response.writeHead(200, { 'Content-Type': TYPES[extname(file)] ?? 'application/octet-stream' });
  createReadStream(file).pipe(response);
});
await new Promise((ready) => server.listen(0, '127.0.0.1', ready));
const address = `http://127.0.0.1:${server.address().port}/`;
const browser = await chromium.launch({ executablePath: BROWSER, args: ['--no-sandbox'] });

/** What a visitor's browser fetched of scripts, gzipped; in the order in which it came. */
async function visit() {
  const page = await (await browser.newContext({ locale: 'en-GB', reducedMotion: 'reduce' })).newPage();
  const scripts = [];
  page.on('request', (request) => {
    const { pathname } = new URL(request.url());
    if (pathname.endsWith('.js'))
      scripts.push([pathname, gzipSync(readFileSync(join(folder, pathname)), { level: 9 }).length]);
  });
  await page.goto(address);
  await page.getByRole('heading', { level: 1 }).waitFor();
  return { page, scripts };
}

const turnTo = (page, leaf) => page.locator(`nav a[href="#${leaf}"]`).click();

const kB = (bytes) => `${(bytes / 1000).toFixed(1)} kB`;
const sum = (scripts) => scripts.reduce((total, [, size]) => total + size, 0);

const { page, scripts } = await visit();
const html = readFileSync(join(folder, 'index.html'), 'utf8');
const first = scripts.filter(([path]) => html.includes(path));
await page.waitForTimeout(500);
console.log(`JavaScript before the first paint, gzipped: ${kB(sum(first))}`);
console.log(`… with what an empty page fetches after it: ${kB(sum(scripts))}`);

await page.locator('#measure-stature').fill('168');
await page.locator('#measure-chest-girth').fill('94');
await page.locator('#measure-hip-girth').fill('99');
await page.locator('main > div > aside dd', { hasText: 'cm' }).first().waitFor({ state: 'attached' });
await page.waitForTimeout(1000);
console.log(`… with the computation and the body model, once there is something to compute: ${kB(sum(scripts))}`);
await turnTo(page, 'design');
await page.locator('#sheet figure').first().waitFor({ state: 'attached' });
console.log(`… with the sheet in full, once its leaf is opened: ${kB(sum(scripts))}`);
await page.context().close();

const at = (values, share) => values.sort((a, b) => a - b)[Math.floor(values.length * share)] ?? NaN;
const summary = (values) =>
  `median ${at(values, 0.5).toFixed(1)} ms, 95th percentile ${at(values, 0.95).toFixed(1)} ms`;

/**
 * Keys as she presses them, in a field on the screen: from the key to the frame that shows it (the browser's own event timing,
 * in steps of 8 ms), to the frame with the numbers it leads to, and all the work of the page's thread until nothing is left to draw.
 */
async function typed(viewport, field, keys) {
  const { page } = await visit();
  await page.setViewportSize(viewport);
  await page.locator('#measure-stature').fill('168');
  await page.locator('#measure-chest-girth').fill('94');
  await page.locator('#measure-hip-girth').fill('99');
  await page.locator('main > div > aside dd', { hasText: 'cm' }).first().waitFor({ state: 'attached' });
  await turnTo(page, 'design');
  await page.locator('#sheet figure').first().waitFor({ state: 'attached' });
  const input = await field(page);
  await page.waitForTimeout(1000);
  const client = await page.context().newCDPSession(page);
  await client.send('Performance.enable');
  await client.send('Emulation.setCPUThrottlingRate', { rate: SLOWER });
  await input.focus();
  await page.evaluate(() => {
    window.keys = [];
    window.frames = [];
    window.computed = [];
    const painted = (then) =>
      requestAnimationFrame(() => {
        const { port1, port2 } = new MessageChannel();
        port1.onmessage = () => then(performance.now());
        port2.postMessage(null);
      });
    addEventListener('keydown', ({ timeStamp }) => window.keys.push({ timeStamp, numbers: null, sheet: null }), true);
    const watch = (selector, what) =>
      new MutationObserver(() => {
        const key = window.keys.at(-1);
        if (key && key[what] === null) painted((now) => (key[what] ??= now - key.timeStamp));
      }).observe(document.querySelector(selector), { subtree: true, characterData: true, childList: true });
    watch('main > div > aside dl', 'numbers');
    watch('#sheet', 'sheet');
    new PerformanceObserver((list) =>
      window.frames.push(...list.getEntriesByName('keydown').map(({ duration }) => duration)),
    ).observe({ type: 'event', durationThreshold: 16 });
    new PerformanceObserver((list) =>
      window.computed.push(...list.getEntriesByName('compute').map(({ duration }) => duration)),
    ).observe({ type: 'measure' });
  });
  const worked = async () => {
    const { metrics } = await client.send('Performance.getMetrics');
    return metrics.find(({ name }) => name === 'TaskDuration').value * 1000;
  };
  const press = async (count) => {
    for (let i = 0; i < count; i++) {
      await page.keyboard.press(keys[i % keys.length]);
      await page.waitForTimeout(BETWEEN_MS);
    }
  };
  await press(6);
  await page.evaluate(() => [window.keys, window.frames, window.computed].forEach((list) => (list.length = 0)));
  const before = await worked();
  await press(KEYS);
  const work = ((await worked()) - before) / KEYS;
  const seen = await page.evaluate(() => ({ keys: window.keys, frames: window.frames, computed: window.computed }));
  await page.context().close();
  const timesOf = (what) => seen.keys.map((key) => key[what]).filter((ms) => ms !== null);
  return { frames: seen.frames, numbers: timesOf('numbers'), sheet: timesOf('sheet'), computed: seen.computed, work };
}

const chest = async (page) => {
  await turnTo(page, 'body');
  return page.locator('#measure-chest-girth');
};
const ease = async (page) => {
  await page.locator('#design').getByRole('radio', { name: 'My own number' }).check();
  const input = page.locator('#design').getByRole('textbox', { name: 'Ease round the chest' });
  await input.fill('14');
  return input;
};
const PHONE = { width: 360, height: 740 };
const WIDE = { width: 1280, height: 900 };

for (const [name, viewport, field, keys] of [
  ['a measure of the body, phone', PHONE, chest, ['Backspace', '2', 'Backspace', '6', 'Backspace', '4']],
  ['a measure of the body, wide', WIDE, chest, ['Backspace', '2', 'Backspace', '6', 'Backspace', '4']],
  [
    'a wish, the sheet in short on the screen (phone)',
    PHONE,
    ease,
    ['Backspace', '2', 'Backspace', '6', 'Backspace', '4'],
  ],
  ['a wish, the sheet on the screen (wide)', WIDE, ease, ['Backspace', '2', 'Backspace', '6', 'Backspace', '4']],
]) {
  const { frames, numbers, sheet, computed, work } = await typed(viewport, field, keys);
  console.log(`A key in ${name}, CPU slowed ${SLOWER}×`);
  console.log(`  until the frame that shows it: ${summary(frames)} (${frames.length} over 16 ms)`);
  console.log(`  until the frame with other numbers of the sheet in short: ${summary(numbers)}`);
  if (sheet.length > 0) console.log(`  until the frame with other numbers of the sheet: ${summary(sheet)}`);
  console.log(`  of that the computation: ${summary(computed)}`);
  console.log(`  all the work of the thread for it: ${work.toFixed(1)} ms`);
}

for (const [name, viewport] of [
  ['phone', PHONE],
  ['wide', WIDE],
]) {
  const { page: typing } = await visit();
  await typing.setViewportSize(viewport);
  await typing.waitForTimeout(800);
  await typing.evaluate(() => {
    window.shifts = [];
    new PerformanceObserver((list) =>
      window.shifts.push(
        ...list
          .getEntries()
          .map(({ value, sources }) => [value, sources.map(({ node }) => node?.className || node?.nodeName)]),
      ),
    ).observe({
      type: 'layout-shift',
    });
  });
  let lying = 'body';
  const open = async (leaf) => {
    if (leaf === lying) return;
    const before = await typing.evaluate(() => window.shifts.length);
    await turnTo(typing, leaf);
    lying = leaf;
    await typing.waitForTimeout(600);
    // Turning a leaf moves what is to be seen: she asked for that. What counts is what moves while she types.
    await typing.evaluate((count) => (window.shifts.length = count), before);
  };
  const type = async (field, text) => {
    await field.focus();
    await typing.keyboard.press('Control+A');
    await typing.keyboard.type(text, { delay: 40 });
    await typing.waitForTimeout(300);
  };
  const leafOf = { measure: 'body', flat: 'garment' };
  // Estimates appear, what cannot be read is said, slips are asked about, the next measure to take becomes another.
  for (const [id, text] of [
    ['measure-stature', '168'],
    ['measure-chest-girth', '94'],
    ['measure-waist-girth', 'abc'],
    ['measure-hip-girth', '40'],
    ['measure-nape-to-cuff', '74'],
    ['measure-head-girth', 'Chest 94 Waist 78 Hip 102 Arm 43 Back 42 Neck 38'],
    ['measure-wrist-girth', '9 m'],
    ['measure-weight', '140'],
    ['measure-chest-girth', '49'],
    ['flat-chest-width', '101'],
    ['flat-hem-width', 'abc'],
    ['flat-sleeve-length', '45'],
    ['flat-cuff-width', '80'],
  ]) {
    await open(leafOf[id.split('-')[0]]);
    await type(typing.locator(`#${id}`), text);
  }
  for (const [part, label, text] of [
    ['yarn', 'Four layers, how high', '26'],
    ['yarn', 'Stitches in 10 cm (4 in)', 'abc'],
    ['yarn', 'Wraps in 2.5 cm (1 in)', '9'],
    ['body', 'Age in years', '140'],
    ['body', 'Name', 'Sigrid'],
    ['design', 'What you call it', 'Cropped'],
  ]) {
    await open(part);
    await type(typing.locator(`#${part}`).getByLabel(label, { exact: true }), text);
  }
  const shifts = await typing.evaluate(() => window.shifts);
  console.log(
    `Layout shift while typing, ${name}: ${shifts.reduce((total, [value]) => total + value, 0).toFixed(4)}`,
    shifts.length ? JSON.stringify(shifts) : '',
  );
}

await browser.close();
server.close();
rmSync(folder, { recursive: true, force: true });
