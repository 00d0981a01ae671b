import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { runApp, type RunningApp } from '../support/app.ts';
import { DATABASES } from '../support/databases.ts';
import { exampleDesign, exampleGarment } from '../support/examples.ts';

interface Dimension {
  readonly name: string;
  readonly state: string;
  readonly value: number | null;
  readonly low: number | null;
  readonly high: number | null;
}

const body = {
  figure: 'woman',
  age: 35,
  measures: [
    { name: 'stature', value: 168, unit: 'cm' },
    { name: 'weight', value: 64, unit: 'kg' },
    { name: 'chest-girth', text: '37 in' },
    { name: 'hip-girth', value: 98, unit: 'cm' },
  ],
};

describe.each(DATABASES)('the profile of a body on %s', (kind) => {
  let api: RunningApp;
  beforeAll(async () => void (api = await runApp(kind)));
  afterAll(() => api.stop());

  const profile = async (request: object) => {
    const response = await api.http.post('/v1/bodies/profile').send(request).expect(200);
    return response.body as {
      dimensions: Dimension[];
      questions: object[];
      garmentQuestions: object[];
      next: { name: string } | null;
      notes: { code: string }[];
    };
  };
  const inState = (dimensions: readonly Dimension[], state: string) =>
    dimensions.filter((dimension) => dimension.state === state).map(({ name }) => name);

  it('shows what was measured and what is estimated side by side, with how sure each is', async () => {
    const { dimensions, questions, notes, next } = await profile({ body });
    expect(inState(dimensions, 'measured')).toEqual(['stature', 'weight', 'chest-girth', 'hip-girth']);
    expect(dimensions.find(({ name }) => name === 'chest-girth')?.value).toBeCloseTo(37 * 25.4, 9);
    expect(inState(dimensions, 'estimated')).toContain('waist-girth');
    for (const { value, low, high, name } of dimensions.filter(({ state }) => state !== 'missing')) {
      expect(low, name).toBeLessThan(value ?? NaN);
      expect(high, name).toBeGreaterThan(value ?? NaN);
    }
    expect(questions).toEqual([]);
    expect(notes.map(({ code }) => code)).toContain('body-model-made-from');
    expect(inState(dimensions, 'measured')).not.toContain(next?.name);
  });

  it('estimates nothing where the maker does not want it', async () => {
    const { dimensions, next } = await profile({ body: { ...body, estimate: false } });
    expect(inState(dimensions, 'estimated')).toEqual([]);
    expect(inState(dimensions, 'missing')).toHaveLength(dimensions.length - 4);
    expect(next).not.toBeNull();
  });

  it('asks about a value that looks like a slip, and changes nothing', async () => {
    const slipped = [{ name: 'hip-girth', value: 98 / 2.54, unit: 'cm' }];
    const { dimensions, questions } = await profile({
      body: { ...body, measures: [...body.measures.slice(0, 3), ...slipped] },
    });
    expect(questions).toHaveLength(1);
    expect(questions[0]).toMatchObject({ name: 'hip-girth', code: 'inches-as-centimetres' });
    expect(dimensions.find(({ name }) => name === 'hip-girth')?.value).toBeCloseTo(980 / 2.54, 6);
  });

  it('asks about a girth that was entered for a garment’s flat width, held against the body', async () => {
    const wide = { ...exampleGarment, measures: [{ name: 'chest-width', value: 104, unit: 'cm' }] };
    const asked = await profile({ body, garment: wide });
    expect(asked.garmentQuestions).toHaveLength(1);
    expect(asked.garmentQuestions[0]).toMatchObject({ name: 'chest-width', code: 'girth-for-width' });
    expect(asked.garmentQuestions[0]).toHaveProperty('wouldBe', 520);
    const flat = { ...exampleGarment, measures: [{ name: 'chest-width', value: 52, unit: 'cm' }] };
    expect((await profile({ body, garment: flat })).garmentQuestions).toEqual([]);
    expect((await profile({ body })).garmentQuestions).toEqual([]);
  });

  it('names the next measure for the design', async () => {
    const vest = { ...exampleDesign, silhouette: 'vest', neckline: 'v' };
    const { next } = await profile({ body: { ...body, estimate: false }, design: vest });
    expect(next?.name).not.toBe('wrist-girth');
    expect((await profile({ body: { measures: [] } })).next?.name).toBe('chest-girth');
  });

  it('reads a kept body in the same way', async () => {
    const kept = await api.http.post('/v1/bodies').send(body).expect(201);
    const read = await api.http.get(`/v1/bodies/${kept.body.id}/profile`).expect(200);
    expect(read.body).toEqual(await profile({ body }));
    await api.http.get('/v1/bodies/01900000-0000-7000-8000-000000000000/profile').expect(404);
  });

  it('takes a child from the published tables', async () => {
    const niece = { figure: 'child', age: 6, measures: [{ name: 'chest-girth', value: 62, unit: 'cm' }] };
    const { dimensions, notes } = await profile({ body: niece });
    expect(inState(dimensions, 'estimated')).toContain('head-girth');
    expect(notes.map(({ code }) => code)).not.toContain('body-model-made-from');
  });
});
