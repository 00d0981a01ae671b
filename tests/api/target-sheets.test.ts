import { parse as parseCsv } from 'csv-parse/sync';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { runApp, type RunningApp } from '../support/app.ts';
import { DATABASES } from '../support/databases.ts';
import { exampleBody, exampleDesign, exampleFabric, exampleGarment, exampleRequest } from '../support/examples.ts';

interface Dimension {
  readonly name: string;
  readonly value: number;
}

interface Computed {
  readonly checks: readonly {
    readonly check: string;
    readonly verdict: string;
    readonly remedies?: readonly { readonly change: Readonly<Record<string, unknown>> }[];
  }[];
}

const valueOf = (dimensions: readonly Dimension[], name: string): number | undefined =>
  dimensions.find((dimension) => dimension.name === name)?.value;

describe.each(DATABASES)('target sheets on %s', (kind) => {
  let api: RunningApp;
  beforeAll(async () => void (api = await runApp(kind)));
  afterAll(() => api.stop());

  const keepInputs = async () => {
    const body = await api.http.post('/v1/bodies').send(exampleBody).expect(201);
    const garment = await api.http.post('/v1/garments').send(exampleGarment).expect(201);
    const fabric = await api.http.post('/v1/fabrics').send(exampleFabric).expect(201);
    return { bodyId: body.body.id as string, garmentId: garment.body.id as string, fabricId: fabric.body.id as string };
  };
  const keepSheet = async () => {
    const ids = await keepInputs();
    const kept = await api.http
      .post('/v1/target-sheets')
      .send({ ...ids, design: exampleDesign, title: 'Grey pullover' })
      .expect(201);
    return { ids, kept };
  };

  it('computes worked example 1 of the model and stores nothing', async () => {
    const response = await api.http.post('/v1/target-sheets/compute').send(exampleRequest).expect(200);
    // model.md, worked examples: W 513.5, L 587.0, shoulder-to-hem 607.6, A 229.2, sleeve 487.5.
    expect(valueOf(response.body.assembled, 'chest-width')).toBeCloseTo(513.5, 1);
    expect(valueOf(response.body.assembled, 'centre-back-length')).toBeCloseTo(587.0, 1);
    expect(valueOf(response.body.assembled, 'armhole-depth')).toBeCloseTo(229.2, 1);
    expect(valueOf(response.body.assembled, 'sleeve-length')).toBeCloseTo(487.5, 1);
    const list = await api.http.get('/v1/target-sheets').expect(200);
    expect(list.body).toEqual({ items: [], next: null });
  });

  it('takes a remedy back as its schema says', async () => {
    const mm = (value: number) => ({ value, unit: 'mm' });
    const neck = { neckWidth: mm(120), frontNeckDepth: mm(40), backNeckDepth: mm(10) };
    const design = { ...exampleDesign, ...neck, opening: { at: 'none' }, cuffWidth: mm(70), ease: mm(20) };
    const request = { ...exampleRequest, design };
    const compute = async (body: object): Promise<Computed> =>
      (await api.http.post('/v1/target-sheets/compute').send(body).expect(200)).body as Computed;
    const remedies = (await compute(request)).checks.flatMap(({ check, remedies = [] }) =>
      remedies.map(({ change }) => ({ check, change })),
    );
    const fields = remedies.flatMap(({ change }) => Object.keys(change));
    expect(fields).toEqual(expect.arrayContaining(['frontNeckDepthMm', 'opening', 'cuffWidthMm']));
    for (const { check, change } of remedies) {
      const changed: { design: object; rules: object } = { design, rules: {} };
      for (const [name, to] of Object.entries(change)) {
        if (name.startsWith('rules/')) changed.rules = { ...changed.rules, [name.slice('rules/'.length)]: to };
        else if (name.endsWith('Mm')) changed.design = { ...changed.design, [name.slice(0, -2)]: mm(to as number) };
        else changed.design = { ...changed.design, [name]: name === 'opening' ? { at: to } : to };
      }
      const after = await compute({ ...request, ...changed });
      expect(['fine', 'tight', 'n/a']).toContain(after.checks.find((each) => each.check === check)?.verdict);
    }
  });

  it('gives the same numbers from kept records as from a request', async () => {
    const { kept } = await keepSheet();
    const request = { ...exampleRequest, garment: exampleGarment };
    const computed = await api.http.post('/v1/target-sheets/compute').send(request).expect(200);
    expect(kept.body.assembled).toEqual(computed.body.assembled);
    expect(kept.body.pieces).toEqual(computed.body.pieces);
  });

  it('gives a sheet in the form that is accepted', async () => {
    const { kept } = await keepSheet();
    const read = (accept: string) => api.http.get(`/v1/target-sheets/${kept.body.id}`).set('Accept', accept);
    const json = await read('application/json').expect(200);
    expect(json.body).toEqual(kept.body);
    const csv = await read('text/csv').expect(200);
    const rows = parseCsv(csv.text, { columns: true }) as Record<string, string>[];
    const chest = rows.find((row) => row['piece'] === 'assembled' && row['name'] === 'chest-width')?.['value'];
    expect(Number(chest)).toBeCloseTo(valueOf(json.body.assembled, 'chest-width')!, 1);
    const svg = await read('image/svg+xml').buffer().expect(200);
    expect(String(svg.text ?? svg.body)).toMatch(/^(<\?xml[^>]*>\s*)?<svg /);
    const text = await read('text/plain').expect(200);
    expect(text.text).toContain('Grey pullover');
    for (const response of [json, csv, svg, text]) {
      expect(response.headers['vary']).toContain('Accept');
    }
    expect((await read('text/html, */*;q=0.1').expect(200)).headers['content-type']).toMatch(/^application\/json/);
    await read('application/pdf').expect(406);
  });

  it('keeps a sheet as it was when its inputs change, and says that they did', async () => {
    const { ids, kept } = await keepSheet();
    const read = async () => {
      expect((await api.http.get(`/v1/target-sheets/${kept.body.id}`).expect(200)).text).toBe(kept.text);
      const { body } = await api.http.get(`/v1/target-sheets/${kept.body.id}/inputs-changed`).expect(200);
      expect(body.id).toBe(kept.body.id);
      return body.inputsChanged;
    };
    expect(await read()).toEqual([]);
    const larger = { ...exampleBody, measures: [{ name: 'chest-girth', value: 104, unit: 'cm' }] };
    await api.http.put(`/v1/bodies/${ids.bodyId}`).set('If-Match', '"1"').send(larger).expect(200);
    expect(await read()).toEqual(['body']);
    await api.http.delete(`/v1/fabrics/${ids.fabricId}`).expect(204);
    expect(await read()).toEqual(['body', 'fabric']);
    const inputs = await api.http.get(`/v1/target-sheets/${kept.body.id}/inputs`).expect(200);
    expect(inputs.body).toMatchObject({
      inputsChanged: ['body', 'fabric'],
      body: { id: ids.bodyId, version: 1, currentVersion: 2 },
      garment: { id: ids.garmentId, version: 1, currentVersion: 1 },
      fabric: { id: ids.fabricId, version: 1, currentVersion: null },
    });
    const list = await api.http.get('/v1/target-sheets?limit=1').expect(200);
    expect(list.body.items[0]).toMatchObject({
      id: kept.body.id,
      title: 'Grey pullover',
      inputsChanged: ['body', 'fabric'],
    });
  });

  it('keeps the snapshot as a request that computes the same sheet again', async () => {
    const { kept } = await keepSheet();
    const { body } = await api.http.get(`/v1/target-sheets/${kept.body.id}/inputs`).expect(200);
    const again = await api.http.post('/v1/target-sheets/compute').send(body.request).expect(200);
    expect({ ...again.body, id: kept.body.id, createdAt: kept.body.createdAt }).toEqual(kept.body);
  });

  it('spares the transfer of what is known', async () => {
    const { kept } = await keepSheet();
    const etag = kept.headers['etag'] ?? '';
    await api.http
      .get(kept.headers['location'] ?? '')
      .set('If-None-Match', etag)
      .expect(304);
    await api.http
      .get(kept.headers['location'] ?? '')
      .set('If-None-Match', etag)
      .set('Accept', 'text/csv')
      .expect(200);
  });

  it('points to an id that names nothing, and keeps no sheet then', async () => {
    const { bodyId } = await keepInputs();
    const before = (await api.http.get('/v1/target-sheets?limit=100')).body.items.length;
    const wrong = await api.http
      .post('/v1/target-sheets')
      .send({ bodyId, fabricId: bodyId, design: exampleDesign })
      .expect(422);
    expect(wrong.body.errors).toEqual([{ pointer: '/fabricId', detail: 'There is no fabric with this id.' }]);
    expect((await api.http.get('/v1/target-sheets?limit=100')).body.items).toHaveLength(before);
  });

  it('points to the id that is missing for the basis', async () => {
    const { bodyId, fabricId } = await keepInputs();
    const request = { bodyId, fabricId, design: { ...exampleDesign, basis: 'garment' } };
    const refused = await api.http.post('/v1/target-sheets').send(request).expect(422);
    expect(refused.body.errors[0].pointer).toBe('/garmentId');
  });

  it('erases a sheet', async () => {
    const { kept } = await keepSheet();
    const at = kept.headers['location'] ?? '';
    await api.http.delete(at).expect(204);
    await api.http.get(at).expect(404);
    await api.http.get(`${at}/inputs`).expect(404);
    await api.http.delete(at).expect(404);
  });

  it('takes other numbers for rules', async () => {
    const request = { ...exampleRequest, rules: { 'ordinary-thickness': 6 } };
    const { body } = await api.http.post('/v1/target-sheets/compute').send(request).expect(200);
    // F = chest 940 + E 75 + 4(t − t₀) = 1015 with t₀ = t = 6; half of it is the width.
    expect(valueOf(body.assembled, 'chest-width')).toBeCloseTo(507.5, 6);
  });

  it('gives the sheet in the unit asked for', async () => {
    const { body } = await api.http
      .post('/v1/target-sheets/compute')
      .send({ ...exampleRequest, unit: 'in' })
      .expect(200);
    expect(body.unit).toBe('in');
    expect(valueOf(body.assembled, 'chest-width')).toBeCloseTo(513.5 / 25.4, 3);
  });

  it('gives no number where the choices leave less than nothing', async () => {
    // Chest 940 − 1000 + 4(6 − 3) is below nothing; a cropped hem does not reach the hip.
    const design = { ...exampleDesign, length: 'cropped', ease: { value: -100, unit: 'cm' } };
    const { body } = await api.http
      .post('/v1/target-sheets/compute')
      .send({ ...exampleRequest, design })
      .expect(200);
    const width = body.assembled.find(({ name }: Dimension) => name === 'chest-width');
    expect(width.value).toBeNull();
    expect(width.noAdvice.reason).not.toBe('');
  });

  it('makes a run of sizes', async () => {
    const request = {
      table: 'craft-yarn-council-woman',
      sizes: ['S', 'M'],
      fabric: exampleFabric,
      design: { ...exampleDesign, length: 'cropped' },
    };
    const run = await api.http.post('/v1/target-sheets/run').send(request).expect(200);
    expect(run.body.items.map(({ size }: { size: string }) => size)).toEqual(['S', 'M']);
    const widths = run.body.items.map(({ sheet }: { sheet: { assembled: Dimension[] } }) =>
      valueOf(sheet.assembled, 'chest-width'),
    );
    // 4 in between the two sizes' chests (Craft Yarn Council, woman S and M, from memory), half of it flat; E and t are the same, and a cropped hem does not reach the hip.
    expect(widths[1] - widths[0]).toBeCloseTo(2 * 25.4, 6);
    const all = await api.http
      .post('/v1/target-sheets/run')
      .send({ ...request, sizes: null })
      .expect(200);
    expect(all.body.items).toHaveLength(9);
    const wrong = await api.http
      .post('/v1/target-sheets/run')
      .send({ ...request, sizes: ['S', 'Q'] })
      .expect(422);
    expect(wrong.body.errors[0].pointer).toBe('/sizes/1');
    const heads = await api.http
      .post('/v1/target-sheets/run')
      .send({ ...request, table: 'head-girth-by-age', sizes: null })
      .expect(422);
    expect(heads.body.errors).toMatchObject([
      { pointer: '/table', detail: expect.stringContaining('no sizes to make') },
    ]);
    const likeGarment = await api.http
      .post('/v1/target-sheets/run')
      .send({ ...request, design: { ...request.design, basis: 'garment' } })
      .expect(422);
    expect(likeGarment.body.errors.map(({ pointer }: { pointer: string }) => pointer)).toEqual(['/design/basis']);
  });
});
