import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { runApp, type RunningApp } from '../support/app.ts';
import { DATABASES } from '../support/databases.ts';
import { exampleBody, exampleFabric, exampleGarment, exampleRequest } from '../support/examples.ts';

const PLAIN = { silhouette: 'pullover', construction: 'drop-shoulder', neckline: 'crew' };
const WIDTH = { name: 'chest-width', value: 52, unit: 'cm' };

const sweater = (title: string, measures: readonly object[], more: object = {}) => ({
  title,
  construction: 'drop-shoulder',
  thickness: { value: 3, unit: 'mm' },
  measures,
  ...more,
});
const wide = (title: string, value: number, more: object = {}) =>
  sweater(title, [{ name: 'chest-width', value, unit: 'cm' }], more);

interface Dimension {
  readonly name: string;
  readonly value: number | null;
  readonly u: number | null;
  readonly noAdvice?: { readonly needs: readonly string[]; readonly reason: string };
}
interface Sheet {
  readonly assembled: readonly Dimension[];
  readonly pieces: readonly { readonly dimensions: readonly Dimension[]; readonly outline?: unknown }[];
  readonly checks: readonly { readonly check: string; readonly verdict: string }[];
  readonly notes: readonly { readonly code: string; readonly text: string; readonly params: Record<string, unknown> }[];
}

/** A kept sheet in an export. */
interface Exported {
  readonly request: { readonly garments: readonly { readonly basis: boolean }[]; readonly design: object };
  readonly sheet: object;
  readonly inputs: { readonly garments: readonly { readonly id: string; readonly version: number }[] };
}

describe.each(DATABASES)('garments that fit, on %s', (kind) => {
  let api: RunningApp;
  beforeAll(async () => void (api = await runApp(kind)));
  afterAll(() => api.stop());

  const compute = async (request: object): Promise<Sheet> =>
    (await api.http.post('/v1/target-sheets/compute').send(request).expect(200)).body as Sheet;
  const errorsOf = async (request: object, path = '/v1/target-sheets/compute') => {
    const { body } = await api.http.post(path).send(request).expect(422);
    return body.errors as { pointer: string; detail: string }[];
  };
  const pointersOf = async (...args: Parameters<typeof errorsOf>) =>
    (await errorsOf(...args)).map(({ pointer }) => pointer);
  const profileOf = async (request: object) =>
    (await api.http.post('/v1/bodies/profile').send(request).expect(200)).body;
  const valueOf = ({ assembled }: Sheet, name: string) => assembled.find((one) => one.name === name)?.value ?? NaN;
  const lacking = ({ assembled, pieces }: Sheet) =>
    [...assembled, ...pieces.flatMap(({ dimensions }) => dimensions)].filter(({ value }) => value === null);

  describe('in a request for a sheet', () => {
    it('are one, in the short form, or several', async () => {
      const { garment: _, ...request } = exampleRequest;
      const short = await compute({ ...request, garment: exampleGarment });
      const listed = await compute({ ...request, garments: [{ ...exampleGarment, basis: true }] });
      expect(listed.assembled).toEqual(short.assembled);
      const two = await compute({ ...request, garments: [exampleGarment, wide('Grey', 50)] });
      expect(two.assembled).not.toEqual(short.assembled);
      expect(await pointersOf({ ...request, garment: exampleGarment, garments: [] })).toEqual(['/garment']);
    });

    it('have one basis at most, else the first with a chest width', async () => {
      const request = { fabric: exampleFabric, design: PLAIN };
      const [cuff, blue, grey] = [
        sweater('Cuff', [{ name: 'cuff-width', value: 10, unit: 'cm' }]),
        wide('Blue', 52),
        wide('Grey', 56),
      ];
      const based = async (garments: object[]) => valueOf(await compute({ ...request, garments }), 'chest-width');
      // F = F_ref + 4(t − t_ref): 3 mm thicker, 6 mm of flat width.
      expect(await based([cuff, blue, grey])).toBeCloseTo(520 + 6, 6);
      expect(await based([cuff, blue, { ...grey, basis: true }])).toBeCloseTo(560 + 6, 6);
      const both = [{ ...blue, basis: true }, cuff, { ...grey, basis: true }];
      expect(await errorsOf({ ...request, garments: both })).toEqual([
        { pointer: '/garments/2/basis', detail: 'garment 0 is the basis already; only one can be' },
      ]);
    });

    it('are twenty at most', async () => {
      const many = (count: number) => Array.from({ length: count }, (_, place) => wide(`No. ${place}`, 52));
      const request = { fabric: exampleFabric, design: PLAIN };
      await compute({ ...request, garments: many(20) });
      for (const count of [21, 41])
        expect(await errorsOf({ ...request, garments: many(count) })).toEqual([
          { pointer: '/garments', detail: 'must not have more than 20 items' },
        ]);
    });

    it('are pointed to where they were sent', async () => {
      const huge = sweater('Huge', [{ name: 'cuff-width', value: 2, unit: 'm' }]);
      const request = { fabric: exampleFabric, design: PLAIN };
      expect(await pointersOf({ ...request, garments: [wide('Blue', 52), huge] })).toEqual([
        '/garments/1/measures/0/unit',
      ]);
      expect(await pointersOf({ ...request, garment: huge })).toEqual(['/garment/measures/0/unit']);
      expect(await pointersOf({ ...request, garments: [{ ...huge, measures: 3 }] })).toEqual(['/garments/0/measures']);
    });

    it.each(['drop-shoulder', 'squared-drop', 'set-in', 'raglan'])(
      'alone give a whole sheet, %s',
      async (construction) => {
        const sheet = await compute({
          garments: [wide('Blue', 52)],
          fabric: exampleFabric,
          design: { ...PLAIN, construction },
        });
        expect(lacking(sheet)).toEqual([]);
        for (const piece of sheet.pieces) expect(piece).toHaveProperty('outline');
        expect(sheet.checks.filter(({ verdict }) => verdict === 'unknown')).toEqual([]);
      },
    );

    it('may have a cuff alone', async () => {
      const cuff = sweater('Cuff', [{ name: 'cuff-width', value: 10, unit: 'cm' }]);
      const sheet = await compute({ garments: [cuff], fabric: exampleFabric, design: PLAIN });
      expect(lacking(sheet)).toEqual([]);
    });

    it('that contradict the tape, or each other, ask', async () => {
      const { garment: _, ...request } = exampleRequest;
      const notesOf = async (change: object) =>
        (await compute({ ...request, ...change })).notes.filter(({ code }) => code.startsWith('garment'));
      const fits = { fits: 'classic' };
      expect(await notesOf({ garments: [wide('Blue', 51, fits)] })).toEqual([]);
      expect(await notesOf({ garments: [wide('Blue', 66, fits)] })).toMatchObject([
        { code: 'garment-beside-tape', params: { garment: 'Blue', measure: 'chest-width' } },
      ]);
      expect(await notesOf({ body: null, garments: [wide('Blue', 44, fits), wide('Grey', 66, fits)] })).toMatchObject([
        { code: 'garments-apart', params: { garments: ['Blue', 'Grey'] } },
      ]);
    });

    it('give their ease to a design', async () => {
      const change = { value: 2, unit: 'cm' };
      const request = {
        garments: [wide('Blue', 52)],
        fabric: { ...exampleFabric, thickness: { value: 3, unit: 'mm' } },
      };
      const widthOf = async (ease: object, more: object = {}) =>
        valueOf(await compute({ ...request, ...more, design: { ...PLAIN, ease } }), 'chest-width');
      expect(await widthOf({ as: 'garment' })).toBeCloseTo(520, 6);
      expect(await widthOf({ as: 'garment', change })).toBeCloseTo(530, 6);
      const two = { garments: [wide('Blue', 52), wide('Grey', 53)] };
      expect(await widthOf({ as: 'favourites' }, two)).toBeGreaterThan(0);
      const refused = async (ease: object, garments: object[] = request.garments) =>
        pointersOf({ ...request, garments, design: { ...PLAIN, ease } });
      expect(await refused({ as: 'favourites' })).toEqual(['/design/ease']);
      expect(await refused({ as: 'garment' }, [])).toEqual(['/design/ease']);
      expect(await refused({ as: 'garment', category: 'classic' })).toEqual(['/design/ease/category']);
      expect(await refused({ category: 'classic', value: 5, unit: 'cm' })).toEqual(['/design/ease/value']);
      expect(await refused({ as: 'favourites', change })).toEqual(['/design/ease/change']);
      expect(await refused({ as: 'garment', change: { value: 2, unit: 'm', text: '2 cm' } })).not.toEqual([]);
    });

    it('have a length to be as long as', async () => {
      const request = { fabric: exampleFabric, design: { ...PLAIN, length: 'as-garment' } };
      expect(await pointersOf({ ...request, garments: [wide('Blue', 52)] })).toEqual(['/design/length']);
      const long = sweater('Blue', [WIDTH, { name: 'shoulder-to-hem', value: 62, unit: 'cm' }]);
      expect(valueOf(await compute({ ...request, garments: [long] }), 'shoulder-to-hem')).toBeCloseTo(620, 6);
    });

    it('may not be there at all: nothing known gives no numbers, and what would help most', async () => {
      const sheet = await compute({ fabric: exampleFabric, design: PLAIN });
      const width = sheet.assembled.find(({ name }) => name === 'chest-width')!;
      expect(width.value).toBeNull();
      expect(width.noAdvice!.needs).toEqual(['chest-girth']);
      expect(width.noAdvice!.reason).not.toBe('');
      expect((await profileOf({})).next.name).toBe('chest-girth');
    });
  });

  describe('a published size', () => {
    const ofSize = (size: object, more: object = {}) => ({ figure: 'woman', measures: [], ...more, size });

    it('stands for the measures of its row', async () => {
      const size = { table: 'craft-yarn-council-woman', size: 'M' };
      const { dimensions } = await profileOf({ body: ofSize(size) });
      // Woman M: 36 to 38 in (Craft Yarn Council, from memory).
      expect(dimensions.find(({ name }: Dimension) => name === 'chest-girth')).toMatchObject({
        state: 'estimated',
        how: 'table',
        from: expect.stringContaining('Craft Yarn Council, woman M'),
      });
      const measured = { measures: [{ name: 'chest-girth', value: 101, unit: 'cm' }] };
      const both = await profileOf({ body: ofSize(size, measured) });
      expect(both.dimensions.find(({ name }: Dimension) => name === 'chest-girth')).toMatchObject({
        state: 'measured',
        value: 1010,
      });
      expect(both.questions).toEqual([]);
      expect(lacking(await compute({ body: ofSize(size), fabric: exampleFabric, design: PLAIN }))).toEqual([]);
    });

    it('is refused where it is not in its table, naming those there are', async () => {
      const request = (body: object) => ({ body, fabric: exampleFabric, design: PLAIN });
      const table = 'craft-yarn-council-woman';
      const [unknown] = await errorsOf(request(ofSize({ table, size: '7XL' })));
      expect(unknown).toEqual({ pointer: '/body/size/size', detail: expect.stringContaining('XS, S, M, L') });
      expect(await pointersOf(ofSize({ table, size: '7XL' }), '/v1/bodies')).toEqual(['/size/size']);
      expect(await pointersOf(request(ofSize({ table: 'mine', size: 'M' })))).toEqual(['/body/size/table']);
      expect(await pointersOf(request(ofSize({ size: 'M' })))).toEqual(['/body/size/table']);
      const child = await errorsOf(request(ofSize({ table, size: 'M' }, { figure: 'child' })));
      expect(child).toEqual([{ pointer: '/body/size/table', detail: expect.stringContaining('for a woman') }]);
    });

    it('is kept as it was entered', async () => {
      const size = { table: 'craft-yarn-council-man', size: 'L' };
      const kept = await api.http.post('/v1/bodies').send({ figure: 'man', measures: [], size }).expect(201);
      expect(kept.body).toMatchObject({ size, measures: [] });
      const read = await api.http.get(`/v1/bodies/${kept.body.id}/profile`).expect(200);
      expect(read.body).toEqual(await profileOf({ body: { figure: 'man', measures: [], size } }));
    });
  });

  describe('in a profile', () => {
    it('say what they tell: estimates, their ease, what she likes', async () => {
      const garments = [
        wide('Blue', 52, { fits: 'classic' }),
        wide('', 54, { fits: 'loose', wears: { chest: 'right' } }),
      ];
      const profile = await profileOf({ garments });
      const chest = profile.dimensions.find(({ name }: Dimension) => name === 'chest-girth');
      expect(chest).toMatchObject({ state: 'estimated', outsideSurveys: false, from: expect.stringContaining('Blue') });
      expect(chest.value).toBeGreaterThan(850);
      expect(chest.value).toBeLessThan(1050);
      expect(profile.sweaters).toMatchObject([
        { garment: 0, title: 'Blue', lies: { code: 'within', params: { category: 'classic' }, text: 'classic' } },
        { garment: 1, title: '' },
      ]);
      for (const { ease } of profile.sweaters) {
        expect(ease.u).toBeGreaterThan(0);
        expect(ease.low).toBeLessThan(ease.value);
        expect(ease.high).toBeGreaterThan(ease.value);
      }
      const [one, two] = profile.sweaters.map(({ ease }: { ease: { value: number } }) => ease.value);
      // The usual 75 weighs as one sweater.
      expect(profile.favourites).toMatchObject({ count: 2, mean: expect.closeTo((75 + one + two) / 3, 6) });
      expect((await profileOf({ garments: garments.slice(0, 1) })).favourites).toBeNull();
      expect(profile.contradictions).toEqual([]);
    });

    it('mark what lies outside the surveys', async () => {
      const large = [{ name: 'chest-girth', value: 170, unit: 'cm' }];
      const { dimensions } = await profileOf({ body: { figure: 'woman', measures: large } });
      const marked = dimensions.filter(({ outsideSurveys }: { outsideSurveys: boolean }) => outsideSurveys);
      expect(marked.map(({ name }: Dimension) => name)).toContain('upper-arm-girth');
    });

    it('ask about slips and contradictions, and say of which garment', async () => {
      const body = exampleBody;
      const garments = [
        wide('Blue', 51, { fits: 'classic' }),
        wide('Round', 102),
        wide('Wide', 66, { fits: 'classic' }),
      ];
      const { garmentQuestions, contradictions } = await profileOf({ body, garments });
      expect(garmentQuestions).toMatchObject([{ garment: 1, name: 'chest-width', code: 'girth-for-width' }]);
      const wideOne = contradictions.find(({ garments: at }: { garments: number[] }) => at.includes(2));
      expect(wideOne).toMatchObject({ garments: [2], name: 'chest-width', code: 'garment-beside-tape' });
      expect(wideOne.difference).toBeGreaterThan(2 * wideOne.u);
      expect(wideOne.text).toContain('Wide');
      const apart = await profileOf({
        garments: [wide('7', 44, { fits: 'classic' }), wide('', 66, { fits: 'classic' })],
      });
      expect(apart.contradictions).toMatchObject([{ garments: [0, 1], code: 'garments-apart' }]);
    });

    it('count beside a kept body', async () => {
      const body = await api.http.post('/v1/bodies').send(exampleBody).expect(201);
      const kept = await Promise.all(
        [wide('Blue', 52), wide('Grey', 53)].map((one) => api.http.post('/v1/garments').send(one).expect(201)),
      );
      const ids = kept.map((one) => one.body.id as string);
      const at = `/v1/bodies/${body.body.id}/profile`;
      const read = await api.http.get(`${at}?garments=${ids.join(',')}`).expect(200);
      expect(read.body).toEqual(await profileOf({ body: exampleBody, garments: [wide('Blue', 52), wide('Grey', 53)] }));
      for (const wrong of ['x', `${ids[0]},`, body.body.id])
        expect((await api.http.get(`${at}?garments=${wrong}`).expect(400)).body.errors).toMatchObject([
          { parameter: 'garments' },
        ]);
    });

    it('may be called anything', async () => {
      const titles = ['chest-girth', '1', '__proto__', 'constructor', 'Same', 'Same', ''];
      const { sweaters, dimensions } = await profileOf({
        garments: titles.map((title, place) => wide(title, 50 + place)),
      });
      expect(sweaters.map(({ title }: { title: string }) => title)).toEqual(titles);
      expect(dimensions.find(({ name }: Dimension) => name === 'chest-girth').value).toBeGreaterThan(850);
    });
  });

  describe('of a kept sheet', () => {
    const keep = async () => {
      const post = async (path: string, record: object) =>
        (await api.http.post(path).send(record).expect(201)).body.id as string;
      const blue = await post('/v1/garments', wide('Blue', 52, { neckline: 'crew', fits: 'classic' }));
      const grey = await post('/v1/garments', wide('Grey', 54, { wears: { cuff: 'roomy' } }));
      const bodyId = await post('/v1/bodies', exampleBody);
      const fabricId = await post('/v1/fabrics', exampleFabric);
      const request = { bodyId, fabricId, design: PLAIN, garments: [{ id: blue }, { id: grey, basis: true }] };
      const sheet = await api.http.post('/v1/target-sheets').send(request).expect(201);
      return { blue, grey, bodyId, fabricId, request, sheet: sheet.body };
    };

    it('are in its snapshot, which computes it again', async () => {
      const { blue, grey, sheet } = await keep();
      const { body } = await api.http.get(`/v1/target-sheets/${sheet.id}/inputs`).expect(200);
      expect(body.request.garments).toMatchObject([
        { title: 'Blue', basis: false },
        { title: 'Grey', basis: true },
      ]);
      expect(body.garments.map(({ id }: { id: string }) => id)).toEqual([blue, grey]);
      expect(body.garment.id).toBe(grey);
      const again = await compute(body.request);
      expect({ ...again, id: sheet.id, createdAt: sheet.createdAt }).toEqual(sheet);
      // 54 wide, and 6 mm flat for a fabric that is 3 mm thicker.
      expect(valueOf(sheet, 'chest-width')).toBeCloseTo(546, 6);
    });

    it('are changed when any of them is, or is gone', async () => {
      const { blue, grey, sheet } = await keep();
      const changed = async () =>
        (await api.http.get(`/v1/target-sheets/${sheet.id}/inputs-changed`).expect(200)).body.inputsChanged;
      expect(await changed()).toEqual([]);
      await api.http.put(`/v1/garments/${grey}`).set('If-Match', '"1"').send(wide('Grey', 55)).expect(200);
      expect(await changed()).toEqual(['garment']);
      await api.http.delete(`/v1/garments/${blue}`).expect(204);
      const { body } = await api.http.get(`/v1/target-sheets/${sheet.id}/inputs`).expect(200);
      expect(body.garments).toMatchObject([{ currentVersion: null }, { version: 1, currentVersion: 2 }]);
      const list = await api.http.get('/v1/target-sheets?limit=1').expect(200);
      expect(list.body.items[0].inputsChanged).toEqual(['garment']);
    });

    it('are pointed to', async () => {
      const { blue, bodyId, request } = await keep();
      const wrong = (change: object) => pointersOf({ ...request, ...change }, '/v1/target-sheets');
      expect(await wrong({ garments: [{ id: blue }, { id: bodyId }] })).toEqual(['/garments/1/id']);
      expect(await wrong({ garments: [{ id: blue }, { id: blue }] })).toEqual(['/garments/1/id']);
      expect(await wrong({ garmentId: blue })).toEqual(['/garmentId']);
      expect(await wrong({ garments: null, garmentId: bodyId })).toEqual(['/garmentId']);
      const bases = [...request.garments, { id: blue, basis: true }];
      expect(await wrong({ garments: bases })).toContain('/garments/2/id');
      expect(await wrong({ garments: Array.from({ length: 41 }, () => ({ id: blue })) })).toEqual(['/garments']);
    });

    it('need no body', async () => {
      const { request } = await keep();
      const sheet = await api.http
        .post('/v1/target-sheets')
        .send({ ...request, bodyId: null })
        .expect(201);
      expect(lacking(sheet.body)).toEqual([]);
    });

    it('come back from an export as they were', async () => {
      await api.http.delete('/v1/everything?confirm=erase-everything').expect(204);
      const { sheet } = await keep();
      const linked = wide('Made', 52, { madeFrom: sheet.id });
      await api.http.post('/v1/garments').send(linked).expect(201);
      const size = { table: 'craft-yarn-council-woman', size: 'M' };
      await api.http.post('/v1/bodies').send({ figure: 'woman', measures: [], size }).expect(201);
      const exported = await api.http.get('/v1/export').expect(200);
      expect(exported.body.version).toBe('3.0');
      await api.http.delete('/v1/everything?confirm=erase-everything').expect(204);
      await api.http.post('/v1/import').send(exported.body).expect(201);
      expect((await api.http.get('/v1/export').expect(200)).text).toBe(exported.text);
    });

    it('come from an export of before there were several', async () => {
      await api.http.delete('/v1/everything?confirm=erase-everything').expect(204);
      const { grey } = await keep();
      const { body: exported } = await api.http.get('/v1/export').expect(200);
      const earlier = exported.targetSheets.map(({ request, sheet, inputs }: Exported) => {
        const { garments, ...rest } = request;
        const { garments: ids, ...others } = inputs;
        const { basis: _, ...garment } = garments[1]!;
        const ease = { category: 'classic', place: 0.5 };
        const design = { ...request.design, basis: 'both', ease, easeChange: { value: 1, unit: 'cm', text: null } };
        const garmentId = { garmentId: ids[1]!.id, garmentVersion: ids[1]!.version };
        return { sheet, request: { ...rest, garment, design }, inputs: { ...others, ...garmentId } };
      });
      await api.http.delete('/v1/everything?confirm=erase-everything').expect(204);
      await api.http
        .post('/v1/import')
        .send({ ...exported, version: '2.0', targetSheets: earlier })
        .expect(201);
      const [read] = (await api.http.get('/v1/export').expect(200)).body.targetSheets;
      expect(read.inputs.garments).toEqual([{ id: grey, version: 1 }]);
      expect(read.request.garments).toMatchObject([{ title: 'Grey', basis: true }]);
      expect(read.request.design.ease).toEqual({ as: 'garment', change: { value: 1, unit: 'cm', text: null } });
      await compute(read.request);
    });
  });

  describe('made from a kept sheet', () => {
    const MADE = ['chest-width', 'shoulder-to-hem', 'sleeve-length'] as const;
    const keep = async () => {
      const fabric = await api.http.post('/v1/fabrics').send(exampleFabric).expect(201);
      const body = await api.http.post('/v1/bodies').send(exampleBody).expect(201);
      const request = { bodyId: body.body.id, fabricId: fabric.body.id, design: PLAIN };
      const sheet = await api.http.post('/v1/target-sheets').send(request).expect(201);
      return { sheet: sheet.body as Sheet & { id: string }, fabricId: fabric.body.id as string };
    };
    /** What was made by a sheet, lengths 2 % longer and widths 1 % narrower. */
    const washed = (sheet: Sheet & { id: string }, more: object = {}) => ({
      ...sweater(
        'Made',
        MADE.map((name) => ({
          name,
          value: valueOf(sheet, name) * (name === 'chest-width' ? 0.99 : 1.02),
          unit: 'mm',
        })),
      ),
      thickness: { value: 6, unit: 'mm' },
      madeFrom: sheet.id,
      ...more,
    });
    const learned = async (garment: object) => {
      const kept = await api.http.post('/v1/garments').send(garment).expect(201);
      return (await api.http.get(`/v1/garments/${kept.body.id}/learned`).expect(200)).body;
    };

    it('tells the growth of its yarn, which can be taken over and taken back', async () => {
      const { sheet, fabricId } = await keep();
      const told = await learned(washed(sheet));
      expect(told).toMatchObject({ targetSheetId: sheet.id, fabric: { id: fabricId, version: 1, growth: null } });
      expect(told.along.growth).toBeCloseTo(0.02, 9);
      expect(told.along.from.map(({ name }: { name: string }) => name)).toEqual(['shoulder-to-hem', 'sleeve-length']);
      // The flat width W is F/2, and the panel (F − (4 − π)t)/2: 1 % of W is a little more of the panel.
      expect(told.across.growth).toBeCloseTo(-0.01, 3);
      expect(told.along.u).toBeGreaterThan(0.015 / Math.SQRT2);
      expect(told.notOffered).toBeNull();
      const taken = { ...exampleFabric, growth: told.offered };
      await api.http.put(`/v1/fabrics/${fabricId}`).set('If-Match', '"1"').send(taken).expect(200);
      const back = { ...exampleFabric, growth: told.fabric.growth };
      const after = await api.http.put(`/v1/fabrics/${fabricId}`).set('If-Match', '"2"').send(back).expect(200);
      expect(after.body.growth).toBeNull();
    });

    it('keeps the growth of a direction that it tells nothing of', async () => {
      const { sheet, fabricId } = await keep();
      const growth = { across: 0.04, along: 0.01 };
      const grown = { ...exampleFabric, growth };
      await api.http.put(`/v1/fabrics/${fabricId}`).set('If-Match', '"1"').send(grown).expect(200);
      const lengths = washed(sheet).measures.slice(1);
      const told = await learned(washed(sheet, { measures: lengths }));
      expect(told.across).toBeNull();
      expect(told.offered).toEqual({ across: 0.04, along: told.along.growth });
    });

    it('says why it offers nothing', async () => {
      const { sheet, fabricId } = await keep();
      const why = async (change: object) => {
        const told = await learned(washed(sheet, change));
        expect(told.offered).toBeNull();
        return told.notOffered.code;
      };
      expect(await why({ madeFrom: null })).toBe('not-linked');
      expect(await why({ madeFrom: '01900000-0000-7000-8000-00000000abcd' })).toBe('sheet-gone');
      expect(await why({ measures: [{ name: 'cuff-width', value: 10, unit: 'cm' }] })).toBe('nothing-comparable');
      const inches = washed(sheet).measures.map((one) => ({ ...one, value: (one as { value: number }).value / 2.54 }));
      expect(await why({ measures: inches })).toBe('growth-unlikely');
      const other = { ...sheet, id: '01900000-0000-7000-8000-00000000beef' };
      await api.http.delete(`/v1/target-sheets/${other.id}`);
      await api.http.post('/v1/target-sheets/import').send(other).expect(201);
      expect(await why({ madeFrom: other.id })).toBe('sheet-read-in');
      await api.http.delete(`/v1/fabrics/${fabricId}`).expect(204);
      expect(await why({})).toBe('fabric-gone');
      await api.http.get('/v1/garments/01900000-0000-7000-8000-00000000abcd/learned').expect(404);
      const wrong = await api.http
        .post('/v1/garments')
        .send(washed(sheet, { madeFrom: 'the grey one' }))
        .expect(422);
      expect(wrong.body.errors).toMatchObject([{ pointer: '/madeFrom' }]);
    });
  });
});
