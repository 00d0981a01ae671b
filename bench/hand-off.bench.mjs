// 200 hand-offs a second, asked for at even times whether or not the last is answered, to a planner on this machine, on SQLite:
// how many are accepted and brought, how long after they were accepted, and the memory of the API process meanwhile.
// Wanted: all of them, within a second, memory flat.
import { spawn } from 'node:child_process';
import { once } from 'node:events';
import { mkdtempSync, readFileSync, rmSync } from 'node:fs';
import http from 'node:http';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { setTimeout as delay } from 'node:timers/promises';

const RATE = 200;
const SECONDS = Number(process.env.BENCH_SECONDS ?? 60);
const WARM_UP = 10;

const arrived = new Map();
const planner = http.createServer((request, response) => {
  arrived.set(request.headers['webhook-id'], Date.now());
  request.resume().once('end', () => response.end());
});
planner.listen(0, '127.0.0.1');
await once(planner, 'listening');

const folder = mkdtempSync(join(tmpdir(), 'easewright-bench-'));
const api = spawn(process.execPath, ['dist/apps/api/src/main.js'], {
  env: { ...process.env, PORT: '0', DATA_DIR: folder, HANDOFF_ALLOW: 'loopback', PAGE_DIR: 'none' },
  stdio: ['ignore', 'pipe', 'inherit'],
});
let said = '';
for await (const chunk of api.stdout) if (/is at http\S+/.test((said += chunk))) break;
const origin = /is at (http\S+)/.exec(said)[1];

const agent = new http.Agent({ keepAlive: true, maxSockets: 64 });
function post(path, body) {
  return new Promise((resolve, reject) => {
    const request = http.request(origin + path, {
      method: 'POST',
      agent,
      headers: { 'content-type': 'application/json' },
    });
    // A connection kept open may be closed by the other end just as it is used again.
    request.once('error', (error) => (request.reusedSocket ? resolve(post(path, body)) : reject(error)));
    request.once('response', async (response) => {
      const text = Buffer.concat(await response.toArray()).toString();
      if (response.statusCode >= 300) return reject(new Error(`${path} ${response.statusCode} ${text}`));
      resolve(JSON.parse(text));
    });
    request.end(JSON.stringify(body));
  });
}

const cm = (name, value) => ({ name, value, unit: 'cm' });
const { id: bodyId } = await post('/v1/bodies', {
  figure: 'woman',
  measures: [
    cm('chest-girth', 94),
    cm('hip-girth', 99),
    cm('back-waist-length', 43.7),
    cm('across-back', 40.4),
    cm('nape-to-cuff', 74.3),
    cm('upper-arm-girth', 28),
    cm('wrist-girth', 16),
    cm('scye-depth', 18.4),
    cm('neck-base-girth', 37.1),
    cm('head-girth', 56.1),
  ],
});
const { id: fabricId } = await post('/v1/fabrics', { craft: 'knit', thickness: { value: 6, unit: 'mm' } });
const { id: sheetId } = await post('/v1/target-sheets', {
  bodyId,
  fabricId,
  design: {
    silhouette: 'pullover',
    construction: 'drop-shoulder',
    length: 'regular',
    neckline: 'crew',
    basis: 'body',
    hem: 'straight',
    ease: { category: 'classic', place: 0.5 },
  },
});
const address = `http://127.0.0.1:${planner.address().port}/take`;
const { id: plannerId } = await post('/v1/planners', {
  title: 'Bench',
  address,
  takes: { unit: 'in', roundingStep: 0.25 },
});

const megabytes = () => Number(/VmRSS:\s+(\d+)/.exec(readFileSync(`/proc/${api.pid}/status`, 'utf8'))[1]) / 1024;
/** Of the API process so far, user and system, in ms; Linux counts in hundredths of a second. */
function cpuMs() {
  const fields = readFileSync(`/proc/${api.pid}/stat`, 'utf8').split(') ')[1].split(' ');
  return (Number(fields[11]) + Number(fields[12])) * 10;
}
const accepted = [];
const answerMs = [];
const memory = [];
let waiting = 0;
let mostWaiting = 0;

/** Asks `RATE` times a second for `seconds`, at even times. */
async function run(seconds, note) {
  const start = performance.now();
  const asked = [];
  for (let index = 0; index < RATE * seconds; index++) {
    const due = start + (index * 1000) / RATE;
    const early = due - performance.now();
    if (early > 1) await delay(early);
    const begun = performance.now();
    mostWaiting = Math.max(mostWaiting, ++waiting);
    asked.push(
      post(`/v1/target-sheets/${sheetId}/hand-offs`, { plannerId }).then(({ id, createdAt }) => {
        waiting--;
        if (note) {
          accepted.push({ id, at: Date.parse(createdAt) });
          answerMs.push(performance.now() - begun);
        }
      }),
    );
    if (note && index % RATE === 0) memory.push(megabytes());
  }
  await Promise.all(asked);
  return (performance.now() - start) / 1000;
}

await run(WARM_UP, false);
const cpuBefore = cpuMs();
const took = await run(SECONDS, true);
const patience = Date.now() + 30_000;
while (accepted.some(({ id }) => !arrived.has(id)) && Date.now() < patience) await delay(20);

const cpu = cpuMs() - cpuBefore;

const lags = accepted.flatMap(({ id, at }) => (arrived.has(id) ? [arrived.get(id) - at] : []));
const at = (values, part) =>
  values.toSorted((a, b) => a - b)[Math.min(values.length - 1, Math.floor(values.length * part))];
const third = (values, index) => {
  const size = Math.ceil(values.length / 3);
  return at(values.slice(index * size, (index + 1) * size), 0.5);
};
const ms = (values) =>
  `median ${Math.round(at(values, 0.5))} ms, 95 % ${Math.round(at(values, 0.95))} ms, most ${Math.round(at(values, 1))} ms`;
console.log(`asked for            ${RATE}/s for ${SECONDS} s`);
console.log(`accepted             ${accepted.length}, ${Math.round(accepted.length / took)}/s`);
console.log(`brought              ${lags.length}`);
console.log(`lag after accepting  ${ms(lags)}`);
console.log(`answer to the maker  ${ms(answerMs)}`);
console.log(`most unanswered      ${mostWaiting}`);
console.log(`processor time       ${(cpu / accepted.length).toFixed(2)} ms a hand-off`);
console.log(
  `memory of the API    ${third(memory, 0).toFixed(0)} MB in the first third, ${third(memory, 2).toFixed(0)} MB in the last`,
);

api.kill('SIGTERM');
await once(api, 'exit');
planner.closeAllConnections();
planner.close();
agent.destroy();
rmSync(folder, { recursive: true, force: true });
