import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import { runApp, type RunningApp } from '../support/app.ts';
import { exampleBody } from '../support/examples.ts';
import { until } from '../support/until.ts';
import { otherProgram, type OtherProgram } from '../support/other-program.ts';

const MARK = 'a name found nowhere else';

describe('an erasure from the embedded database', () => {
  let api: RunningApp;
  let reader: OtherProgram;
  beforeEach(async () => {
    api = await runApp('sqlite');
    reader = await otherProgram(join(api.env['DATA_DIR'] ?? '', 'easewright.sqlite'));
  });
  afterEach(async () => {
    await reader.close();
    await api.stop();
  });

  const keep = async () =>
    (
      await api.http
        .post('/v1/bodies')
        .send({ ...exampleBody, title: MARK })
        .expect(201)
    ).body as { id: string };
  const isInFiles = (): boolean =>
    readdirSync(api.env['DATA_DIR'] ?? '').some((file) =>
      readFileSync(join(api.env['DATA_DIR'] ?? '', file)).includes(MARK),
    );

  it('leaves nothing in the files', async () => {
    await keep();
    await api.http.delete('/v1/everything?confirm=erase-everything').expect(204);
    expect(isInFiles()).toBe(false);
  });

  it.each(['everything', 'one record'])('of %s beside a reader says what is left, and sees to it', async (what) => {
    const { id } = await keep();
    await reader.run('BEGIN');
    await reader.run('SELECT count(*) FROM body');
    const path = what === 'everything' ? '/v1/everything?confirm=erase-everything' : `/v1/bodies/${id}`;
    const erased = await api.http.delete(path).expect(200);
    expect(erased.body).toMatchObject({ erased: true, remainsIn: 'write-ahead-log' });
    await api.http.get(`/v1/bodies/${id}`).expect(404);
    await reader.run('COMMIT');
    await until(() => !isInFiles());
  });

  it('happens to what a change replaces, too', async () => {
    const { id } = await keep();
    await api.http
      .put(`/v1/bodies/${id}`)
      .set('If-Match', '"1"')
      .send({ ...exampleBody, title: 'another' })
      .expect(200);
    expect(isInFiles()).toBe(false);
  });
});
