import { afterEach, expect, it, vi } from 'vitest';
import { runApp, type RunningApp } from '../support/app.ts';
import { exampleFabric } from '../support/examples.ts';
import { RealPlanner } from '../support/real-planner.ts';
import { keepExampleSheet } from '../support/kept-examples.ts';
import { until } from '../support/until.ts';

const HOUR = 3_600_000;

let api: RunningApp | undefined;
afterEach(async () => {
  vi.useRealTimers();
  await api?.stop();
});

it('a clock that is set back an hour mixes up no order, no time of change and no schedule', async () => {
  api = await runApp('sqlite', { HANDOFF_ALLOW: 'loopback' });
  const planner = await RealPlanner.start();
  const make = async (title: string) => (await api?.http.post('/v1/fabrics').send({ ...exampleFabric, title }))?.body;
  const sheet = await keepExampleSheet(api);
  const before = await make('before');
  vi.useFakeTimers({ toFake: ['Date'], now: Date.now() - HOUR, shouldAdvanceTime: true });
  const after = await make('after');
  expect(after.createdAt >= before.createdAt).toBe(true);
  const list = (await api.http.get('/v1/fabrics')).body.items as { id: string }[];
  expect(list.map(({ id }) => id).indexOf(after.id)).toBe(0);
  const changed = await api.http
    .put(`/v1/fabrics/${before.id}`)
    .set('If-Match', '"1"')
    .send({ ...exampleFabric, title: 'changed' })
    .expect(200);
  expect(changed.body.updatedAt >= changed.body.createdAt).toBe(true);

  const plannerId = (await api.http.post('/v1/planners').send({ title: 'x', address: planner.address })).body.id;
  planner.answersWith({ status: 500 });
  const { id } = (await api.http.post(`/v1/target-sheets/${sheet.id}/hand-offs`).send({ plannerId }).expect(201)).body;
  await until(() => planner.receivedAs(id).length === 2);
  await planner.stop();
});
