import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { runApp, type RunningApp } from '../support/app.ts';
import { DATABASES } from '../support/databases.ts';
import { exampleBody, exampleDesign, exampleFabric, exampleRequest } from '../support/examples.ts';
import { expectMatchesApi } from '../support/matches-api.ts';

interface Counted {
  readonly unit: string;
  readonly pieces: readonly {
    readonly piece: string;
    readonly dimensions: readonly { readonly name: string; readonly count: number; readonly measures: number }[];
  }[];
}

const over = { value: 10, unit: 'cm' };
const gauge = { main: { stitches: 14, rows: 18, over } };

const dimension = ({ pieces }: Counted, piece: string, name: string) =>
  pieces.find((each) => each.piece === piece)!.dimensions.find((each) => each.name === name)!;

describe.each(DATABASES)('counts on %s', (kind) => {
  let api: RunningApp;
  beforeAll(async () => void (api = await runApp(kind)));
  afterAll(() => api.stop());

  const compute = (more: object, status = 200) =>
    api.http
      .post('/v1/target-sheets/compute/counts')
      .send({ request: exampleRequest, gauge, ...more })
      .expect(status);

  /** The back is 510.9 mm wide (worked example 1): 71.5 stitches at 14 to 10 cm. */
  it('are whole, and measure what they come to', async () => {
    const response = await compute({});
    expectMatchesApi(response);
    const { count, measures } = dimension(response.body as Counted, 'back', 'width');
    expect([71, 72]).toContain(count);
    expect(measures).toBeCloseTo(count / 0.14, 6);
  });

  it('are the same in the unit of the sheet, and with a gauge in inches', async () => {
    const mm = (await compute({})).body as Counted;
    const request = { ...exampleRequest, unit: 'in' };
    const inches = (await compute({ request, gauge: { main: { stitches: 14, rows: 18, over: { text: '100 mm' } } } }))
      .body as Counted;
    expect(inches.unit).toBe('in');
    for (const { piece, dimensions } of mm.pieces)
      for (const { name, count, measures } of dimensions) {
        const other = dimension(inches, piece, name);
        expect(other.count, `${piece}/${name}`).toBe(count);
        expect(other.measures * 25.4).toBeCloseTo(measures, 6);
      }
  });

  it('of a kept sheet are those of the request it was made from, and it stays as it is', async () => {
    const body = await api.http.post('/v1/bodies').send(exampleBody).expect(201);
    const fabric = await api.http.post('/v1/fabrics').send(exampleFabric).expect(201);
    const ids = { bodyId: body.body.id as string, fabricId: fabric.body.id as string };
    const kept = await api.http
      .post('/v1/target-sheets')
      .send({ ...ids, design: exampleDesign })
      .expect(201);
    const address = `/v1/target-sheets/${kept.body.id as string}`;
    const response = await api.http.post(`${address}/counts`).send({ gauge }).expect(200);
    expectMatchesApi(response);
    expect(response.body).toEqual((await compute({})).body);
    expect((await api.http.get(address).expect(200)).body).toEqual(kept.body);
  });

  it('are refused with the field to blame', async () => {
    const at = (stitches: unknown, rows: unknown) => ({ gauge: { main: { stitches, rows, over } } });
    const main = '/gauge/main';
    for (const [wrong, pointer] of [
      [at(0, 18), `${main}/stitches`],
      [at(1e9, 18), `${main}/stitches`],
      [at(14, undefined), `${main}/rows`],
      [at(900, 18), `${main}/stitches`],
      [{ multiple: { main: [6] } }, '/multiple/main'],
      [{ multiple: { main: [6.5, 1] } }, '/multiple/main'],
      [{ multiple: { main: [0, 1] } }, '/multiple/main'],
      [{ parity: 'some' }, '/parity'],
      [{ request: { ...exampleRequest, fabric: { craft: 'knit' } } }, '/request/fabric/thickness'],
    ] as const) {
      const response = await compute(wrong, 422);
      expectMatchesApi(response);
      expect(response.body.errors, JSON.stringify(wrong)).toContainEqual(expect.objectContaining({ pointer }));
    }
    const missing = '/v1/target-sheets/01890a5d-ac96-774b-bcce-b302099a8057/counts';
    await api.http.post(missing).send({ gauge }).expect(404);
  });
});
