import { Client } from 'pg';
import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import { runApp, type RunningApp } from '../support/app.ts';
import { DATABASES } from '../support/databases.ts';
import { keepExampleSheet } from '../support/kept-examples.ts';
import { until } from '../support/until.ts';

describe.runIf(DATABASES.includes('postgres'))('what another request erases at the same moment', () => {
  let api: RunningApp;
  let other: Client;
  beforeEach(async () => {
    api = await runApp('postgres');
    other = new Client({ connectionString: api.env['DATABASE_URL'] });
    await other.connect();
  });
  afterEach(async () => {
    await other.end();
    await api.stop();
  });

  /** Lets a request come upon rows that are being erased, and erases them once it waits for that. */
  const meeting = async (erasing: string, request: () => PromiseLike<{ status: number; body: { code: string } }>) => {
    await other.query('BEGIN');
    await other.query(erasing);
    const answer = Promise.resolve(request());
    const waiting = `SELECT 1 FROM pg_stat_activity WHERE datname = current_database() AND wait_event_type = 'Lock'`;
    await until(async () => {
      // Within a transaction it would be looked at once only.
      await other.query('SELECT pg_stat_clear_snapshot()');
      return ((await other.query(waiting)).rowCount ?? 0) > 0;
    });
    await other.query('COMMIT');
    return answer;
  };

  it('is not there for a read key that is made', async () => {
    const { id } = await keepExampleSheet(api);
    const { status, body } = await meeting('DELETE FROM target_sheet', () =>
      api.http.post('/v1/read-keys').send({ title: 'x', targetSheetId: id }),
    );
    expect([status, body.code]).toEqual([409, 'changed-meanwhile']);
  });

  it.each(['target_sheet', 'planner'])('is not there for a hand-off that is made: %s', async (table) => {
    const { id } = await keepExampleSheet(api);
    const planner = await api.http
      .post('/v1/planners')
      .send({ title: 'x', address: 'https://planner.example/' })
      .expect(201);
    const { status } = await meeting(`DELETE FROM ${table}`, () =>
      api.http.post(`/v1/target-sheets/${id}/hand-offs`).send({ plannerId: planner.body.id }),
    );
    expect([404, 422]).toContain(status);
  });
});
