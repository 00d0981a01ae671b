import type { RunningApp } from './app.ts';
import { exampleBody, exampleDesign, exampleFabric } from './examples.ts';

/** The example's records and what a sheet of them is asked for with. */
export async function keepExampleRecords(api: RunningApp, body: object = exampleBody) {
  const bodyId = (await api.http.post('/v1/bodies').send(body).expect(201)).body.id as string;
  const fabricId = (await api.http.post('/v1/fabrics').send(exampleFabric).expect(201)).body.id as string;
  return { title: 'Grey pullover', bodyId, fabricId, design: exampleDesign };
}

/** A kept sheet of the worked example 1. */
export async function keepExampleSheet(api: RunningApp, body: object = exampleBody): Promise<{ readonly id: string }> {
  const request = await keepExampleRecords(api, body);
  return (await api.http.post('/v1/target-sheets').send(request).expect(201)).body;
}
