import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { runApp, type RunningApp } from '../support/app.ts';
import { exampleDesign, exampleFabric, exampleRequest } from '../support/examples.ts';

interface FieldError {
  readonly pointer: string;
  readonly detail: string;
}

describe('bad input', () => {
  let api: RunningApp;
  beforeAll(async () => void (api = await runApp('sqlite')));
  afterAll(() => api.stop());

  const post = (path: string, text: string | Buffer, type = 'application/json') =>
    api.http
      .post(path)
      .set('Content-Type', type)
      .serialize((body: unknown) => body as string)
      .send(text as string);
  const pointersOf = async (request: object, path = '/v1/target-sheets/compute'): Promise<string[]> => {
    const response = await api.http.post(path).send(request).expect(422);
    return response.body.errors.map(({ pointer }: FieldError) => pointer);
  };

  it.each([
    ['18 kB of [', `{"measures":${'['.repeat(18_000)}`, 'Line 1, column 32: nested more than 20 deep.'],
    ['a key given twice', '{"title":"a",\n "title":"b"}', 'Line 2, column 2: “title” is given twice.'],
    [
      'a key given twice, once escaped',
      '{"title":"a","t\\u0069tle":"b"}',
      'Line 1, column 14: “title” is given twice.',
    ],
    ['__proto__', '{"__proto__":{"title":"a"}}', 'Line 1, column 2: “__proto__” cannot be a name here.'],
    ['constructor', '{"measures":[{"constructor":1}]}', 'Line 1, column 15: “constructor” cannot be a name here.'],
    [
      'NUL in a text',
      '{"title":"a\\u0000b"}',
      'Line 1, column 10: this text holds a character that cannot be kept (NUL or half of a pair).',
    ],
    [
      'half a surrogate pair',
      '{"title":"\\ud83e"}',
      'Line 1, column 10: this text holds a character that cannot be kept (NUL or half of a pair).',
    ],
    ['NaN', '{"age":NaN}', 'Line 1, column 8: not JSON (invalid symbol).'],
    ['a comment', '{/* */"age":1}', 'Line 1, column 2: not JSON (invalid comment token).'],
    ['a comma too many', '{"age":1,}', 'Line 1, column 10: not JSON (property name expected).'],
    ['something after it', '{} {}', 'Line 1, column 4: not JSON (end of file expected).'],
    ['a list', '[]', 'Line 1, column 1: the body must be a JSON object: { … }.'],
    ['nothing', '', 'Line 1, column 1: the body must be a JSON object: { … }.'],
  ])('refuses %s with its place in the text', async (_, text, detail) => {
    const response = await post('/v1/bodies', text).expect(400);
    expect(response.body).toMatchObject({ status: 400, code: 'unreadable', detail });
  });

  it('takes what only looks alike: brackets and escapes within a text', async () => {
    const title = '{"[[[[[[[[[[[[[[[[[[[[[[[[" 🧶 \\ __proto__';
    const response = await api.http.post('/v1/bodies').send({ title, measures: [] }).expect(201);
    expect(response.body.title).toBe(title);
  });

  it('refuses broken UTF-8 and names the byte', async () => {
    const text = Buffer.concat([Buffer.from('{"title":"a'), Buffer.from([0xc3, 0x28]), Buffer.from('"}')]);
    const response = await post('/v1/bodies', text).expect(400);
    expect(response.body.detail).toBe('The body is not UTF-8: byte 11 does not belong to a character.');
  });

  it('refuses what is no JSON in UTF-8, and what is too large', async () => {
    await post('/v1/bodies', 'title=a', 'application/x-www-form-urlencoded').expect(415);
    await post('/v1/bodies', '{}', 'text/plain').expect(415);
    await post('/v1/bodies', '{}', 'application/json; charset=utf-16').expect(415);
    for (const type of ['application/jsonp', 'application/json, text/plain', 'application/json+x', 'json'])
      await post('/v1/bodies', '{}', type).expect(415);
    for (const type of ['APPLICATION/JSON', 'application/json;charset="UTF-8"', 'application/json ; a=b'])
      await post('/v1/bodies', '{}', type).expect(422);
    await post('/v1/bodies', `{"title":"${'a'.repeat(70_000)}"}`).expect(413);
    const noBody = await api.http.post('/v1/bodies').expect(400);
    expect(noBody.headers['content-type']).toMatch(/^application\/problem\+json/);
  });

  it('points to every wrong field at once', async () => {
    const request = {
      ...exampleRequest,
      body: {
        figure: 'dog',
        age: '44',
        measures: [
          { name: 'chest-girth', text: '37 on' },
          { name: 'hip-girth', value: 99 },
          { name: 'hip-girth', value: -3, unit: 'cm' },
          { name: 'weight', value: 60, unit: 'cm', how: 'guess' },
          { name: 'nape-to-cuff', value: 70, unit: 'cm', text: '70 cm', takenAt: '2026-02-30' },
          { name: 'head-girth' },
          { name: 'tail', value: 1e308, unit: 'cm', u: -1 },
        ],
      },
      fabric: { craft: 'knit', thickness: { value: 400, unit: 'mm' }, stretch: { across: 0.2 } },
      design: { ...exampleDesign, neckline: 'polo', ease: { category: 'classic', place: 2 }, band: 25 },
      rules: { 'ordinary-thickness': 1e9, 'no-such-rule': 1 },
      unit: 'ell',
      colour: 'red',
    };
    expect((await pointersOf(request)).sort()).toEqual(
      [
        '/body/age',
        '/body/figure',
        '/body/measures/0/text',
        '/body/measures/1/unit',
        '/body/measures/2/name',
        '/body/measures/2/value',
        '/body/measures/3/how',
        '/body/measures/3/unit',
        '/body/measures/4/takenAt',
        '/body/measures/4/text',
        '/body/measures/5/value',
        '/body/measures/6/name',
        '/body/measures/6/u',
        '/colour',
        '/design/band',
        '/design/ease/place',
        '/design/neckline',
        '/fabric/stretch/along',
        '/fabric/thickness/value',
        '/rules/no-such-rule',
        '/rules/ordinary-thickness',
        '/unit',
      ].sort(),
    );
  });

  it('points to what a lib refuses by the names of the request', async () => {
    const { body } = exampleRequest;
    const tiny = { name: 'chest-girth', text: '15 cm' };
    const request = {
      ...exampleRequest,
      body: { ...body, age: 4, measures: [tiny] },
      garment: {
        construction: 'raglan',
        thickness: { value: 3, unit: 'mm' },
        measures: [{ name: 'cuff-width', value: 2, unit: 'm' }],
      },
      fabric: { craft: 'knit', stitch: 'single-crochet', thickness: { value: 6, unit: 'mm' } },
      design: { ...exampleDesign, length: 'custom' },
    };
    expect((await pointersOf({ ...request, garment: null })).sort()).toEqual([
      '/body/age',
      '/body/measures/0/text',
      '/design/customLength',
      '/fabric/stitch',
    ]);
    expect(await pointersOf({ ...exampleRequest, garment: request.garment })).toEqual(['/garment/measures/0/unit']);
    const likeGarment = { ...exampleDesign, basis: 'garment' };
    expect(await pointersOf({ ...exampleRequest, design: likeGarment })).toEqual(['/design/basis']);
    expect(await pointersOf({ ...exampleRequest, fabric: { craft: 'knit' } })).toEqual(['/fabric/thickness']);
  });

  it('names the items of a list that are no objects', async () => {
    const response = await api.http
      .post('/v1/bodies')
      .send({ measures: [[], { name: 'weight', value: 60, unit: 'kg' }, null, 3] });
    expect(response.body.errors).toEqual([
      { pointer: '/measures', detail: 'every item must be an object: { … }; not so: item 0, 2, 3' },
    ]);
  });

  it('refuses more than 100 measures', async () => {
    const measures = Array.from({ length: 101 }, () => ({ name: 'weight', value: 60, unit: 'kg' }));
    expect(await pointersOf({ measures }, '/v1/bodies')).toEqual(['/measures']);
  });

  it('answers ten thousand wrong fields with the first hundred', async () => {
    const many = Object.fromEntries(Array.from({ length: 6000 }, (_, index) => [`f${index}`, {}]));
    const response = await api.http.post('/v1/bodies').send(many).expect(422);
    expect(response.body.errors).toHaveLength(100);
    expect(response.body.detail).toMatch(/^600[01] fields/);
  });

  it('keeps nothing of what it refused', async () => {
    const before = await api.http.get('/v1/fabrics').expect(200);
    await api.http
      .post('/v1/fabrics')
      .send({ ...exampleFabric, craft: 'felt' })
      .expect(422);
    expect((await api.http.get('/v1/fabrics')).body).toEqual(before.body);
  });
});
