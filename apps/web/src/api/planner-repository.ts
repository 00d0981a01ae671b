import type { components } from '../api.generated.ts';
import { client } from './client.ts';

type Schemas = components['schemas'];
export type Planner = Schemas['KeptPlanner'];
export type PlannerDto = Schemas['PlannerDto'];
export type NewSecret = Schemas['PlannerWithSecret'];
export type Preview = Schemas['PreviewDto'];
type Test = Schemas['TestDto'];
type HandOff = Schemas['HandOffDto'];
export type HandOffWithAttempts = Schemas['HandOffWithAttemptsDto'];

interface Problem {
  readonly detail?: string;
  readonly errors?: readonly { readonly detail: string }[];
}
interface Result<T> {
  readonly data?: T | undefined;
  readonly error?: Problem | undefined;
  readonly response: Response;
}

/** The API rejected a request; each of its reasons. */
export class Refused extends Error {
  constructor(readonly reasons: readonly string[]) {
    super(reasons.join(' '));
  }
}

function taken<T>({ data, error, response }: Result<T>): T {
  if (response.ok) return data as T;
  const reasons = error?.errors?.map(({ detail }) => detail) ?? [];
  throw new Refused(reasons.length > 0 ? [...new Set(reasons)] : [error?.detail ?? String(response.status)]);
}

const at = (id: string) => ({ params: { path: { id } } });
const seen = ({ version }: Planner): string => `"${version}"`;

/** The most that the page shows. */
const MOST_PLANNERS = 100;
const MOST_HAND_OFFS = 10;

export const listPlanners = async (): Promise<readonly Planner[]> =>
  taken(await client.GET('/v1/planners', { params: { query: { limit: MOST_PLANNERS } } })).items;

export const addPlanner = async (body: PlannerDto): Promise<NewSecret> =>
  taken(await client.POST('/v1/planners', { body }));

export const changePlanner = async (planner: Planner, body: PlannerDto): Promise<NewSecret> =>
  taken(
    await client.PUT('/v1/planners/{id}', {
      params: { path: { id: planner.id }, header: { 'If-Match': seen(planner) } },
      body,
    }),
  );

export const removePlanner = async ({ id }: Planner): Promise<void> =>
  void taken(await client.DELETE('/v1/planners/{id}', at(id)));

export const pausePlanner = async ({ id }: Planner): Promise<Planner> =>
  taken(await client.POST('/v1/planners/{id}/pause', at(id)));

export const resumePlanner = async ({ id }: Planner): Promise<Planner> =>
  taken(await client.POST('/v1/planners/{id}/resume', at(id)));

export const makeSecret = async ({ id }: Planner): Promise<NewSecret> =>
  taken(await client.POST('/v1/planners/{id}/secret', at(id)));

export const testPlanner = async ({ id }: Planner): Promise<Test> =>
  taken(await client.POST('/v1/planners/{id}/test', at(id)));

export const previewFor = async ({ id }: Planner, targetSheet: string): Promise<Preview> =>
  taken(await client.GET('/v1/planners/{id}/preview', { params: { path: { id }, query: { targetSheet } } }));

/** However often a request is repeated with the same `key`, the sheet is sent once. */
export const handOn = async (sheet: string, plannerId: string, key: string): Promise<HandOff> =>
  taken(
    await client.POST('/v1/target-sheets/{id}/hand-offs', {
      params: { path: { id: sheet }, header: { 'Idempotency-Key': key } },
      body: { plannerId },
    }),
  );

/** The newest hand-offs to a planner, each with its attempts. */
export async function handOffsTo({ id: planner }: Planner): Promise<readonly HandOffWithAttempts[]> {
  const query = { planner, limit: MOST_HAND_OFFS };
  const { items } = taken(await client.GET('/v1/hand-offs', { params: { query } }));
  return Promise.all(items.map(async ({ id }) => taken(await client.GET('/v1/hand-offs/{id}', at(id)))));
}

export const sendAgain = async (id: string): Promise<HandOffWithAttempts> =>
  taken(await client.POST('/v1/hand-offs/{id}/send-again', at(id)));
