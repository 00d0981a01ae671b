/**
 * The page's figures, reported and never asserted: weight of the first load, a recomputation with the CPU slowed four times
 * (95th percentile), layout shift while typing. Builds the page and serves its files by itself; needs Chromium.
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
const KEYS = 200;
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

const kB = (bytes) => `${(bytes / 1000).toFixed(1)} kB`;
const sum = (scripts) => scripts.reduce((total, [, size]) => total + size, 0);

const { page, scripts } = await visit();
const html = readFileSync(join(folder, 'index.html'), 'utf8');
const first = scripts.filter(([path]) => html.includes(path));
await page.getByRole('heading', { name: 'How it comes out' }).waitFor();
await page.waitForTimeout(500);
console.log(`JavaScript before the first paint, gzipped: ${kB(sum(first))}`);
console.log(`… with what an empty page fetches after it: ${kB(sum(scripts))}`);

const chest = page.locator('#measure-chest-girth');
await page.locator('#measure-stature').fill('168');
await chest.fill('94');
await page.locator('#measure-hip-girth').fill('99');
await page.locator('.glance dd', { hasText: 'cm' }).first().waitFor({ state: 'attached' });
await page.waitForTimeout(1000);
console.log(`… with the reckoner and the body model, once there is something to reckon: ${kB(sum(scripts))}`);
await page.locator('#sheet').scrollIntoViewIfNeeded();
await page.locator('.piece').first().waitFor();
console.log(`… with the sheet in full, once she comes near it: ${kB(sum(scripts))}`);

/** Chrome's own marks of long work would be too coarse: the page is asked to time each key from input to painted frame. */
const client = await page.context().newCDPSession(page);
await client.send('Emulation.setCPUThrottlingRate', { rate: SLOWER });
const times = await page.evaluate(async (keys) => {
  const field = document.getElementById('measure-chest-girth');
  const set = Object.getOwnPropertyDescriptor(HTMLInputElement.prototype, 'value').set;
  const taken = [];
  const reckoned = [];
  new PerformanceObserver((list) => reckoned.push(...list.getEntriesByName('reckon'))).observe({ type: 'measure' });
  for (let i = 0; i < keys + 20; i++) {
    set.call(field, String(90 + (i % 20) / 2));
    const before = performance.now();
    field.dispatchEvent(new Event('input', { bubbles: true }));
    await new Promise((done) => queueMicrotask(done));
    taken.push(performance.now() - before);
    await new Promise((done) => setTimeout(done, 30));
  }
  return { taken: taken.slice(20), reckoned: reckoned.slice(20).map(({ duration }) => duration) };
}, KEYS);
const at = (values, share) => values.sort((a, b) => a - b)[Math.floor(values.length * share)] ?? NaN;
const said = (values) => `median ${at(values, 0.5).toFixed(1)} ms, 95th percentile ${at(values, 0.95).toFixed(1)} ms`;
console.log(`Recomputation of the sheet, CPU slowed ${SLOWER}×: ${said(times.reckoned)}`);
console.log(`… and a key with everything the page draws anew: ${said(times.taken)}`);
await client.send('Emulation.setCPUThrottlingRate', { rate: 1 });

for (const [name, viewport] of [
  ['phone', { width: 360, height: 740 }],
  ['wide', { width: 1280, height: 900 }],
]) {
  const { page: typing } = await visit();
  await typing.setViewportSize(viewport);
  await typing.getByRole('heading', { name: 'How it comes out' }).waitFor();
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
  for (const [id, text] of [
    ['stature', '168'],
    ['chest-girth', '94'],
    ['waist-girth', 'abc'],
    ['hip-girth', '40'],
    ['nape-to-cuff', '74'],
  ]) {
    await typing.locator(`#measure-${id}`).focus();
    await typing.keyboard.type(text, { delay: 40 });
    await typing.waitForTimeout(250);
  }
  await typing.locator('#yarn').getByLabel('Four layers, how high').focus();
  await typing.keyboard.type('26', { delay: 40 });
  await typing.waitForTimeout(400);
  const shifts = await typing.evaluate(() => window.shifts);
  console.log(
    `Layout shift while typing, ${name}: ${shifts.reduce((total, [value]) => total + value, 0).toFixed(4)}`,
    shifts.length ? JSON.stringify(shifts) : '',
  );
}

await browser.close();
server.close();
rmSync(folder, { recursive: true, force: true });
