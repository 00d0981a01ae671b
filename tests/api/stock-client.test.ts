import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import openapiTS, { astToString } from 'openapi-typescript';
import ts from 'typescript';
import { beforeAll, describe, expect, it } from 'vitest';

/** What someone writes against the types that a stock generator makes of the document, as it comes. */
const program = (body: string) => `
import createClient from 'openapi-fetch';
import type { components, paths } from './api.ts';
const client = createClient<paths>({ baseUrl: 'http://127.0.0.1:4114' });

// @ts-expect-error Nothing is made of felt.
export const refused: components['schemas']['FabricDto'] = { craft: 'felt' };

export async function readme(): Promise<string> {
  const { data, error } = await client.POST('/v1/target-sheets/compute', { body: ${body} });
  if (error !== undefined) return error.detail;
  // Without an Accept header it comes as JSON.
  return typeof data === 'string' ? data : widths(data);
}

/** What is kept is all there: nothing of it need be asked for twice. */
export async function kept(id: string): Promise<string> {
  const at = { params: { path: { id } } };
  const body = (await client.GET('/v1/bodies/{id}', at)).data;
  const garment = (await client.GET('/v1/garments/{id}', at)).data;
  const fabric = (await client.GET('/v1/fabrics/{id}', at)).data;
  const planner = (await client.GET('/v1/planners/{id}', at)).data;
  if (body === undefined || garment === undefined || fabric === undefined || planner === undefined) return '';
  const age: number | null = body.age;
  const taken: (string | null)[] = body.measures.map((measure) => measure.takenAt);
  const thick: number | null = garment.thickness.value;
  const stitch: string | null = fabric.stitch;
  const worn: 'close' | 'right' | 'roomy' | undefined = garment.wears.chest;
  const { id: _id, version: _version, createdAt: _made, updatedAt: _changed, ...again } = body;
  await client.PUT('/v1/bodies/{id}', { params: { path: { id }, header: { 'If-Match': '"1"' } }, body: again });
  return [body.title, age, taken, garment.wornStretched, thick, worn, stitch, planner.takes.names, planner.address].join();
}

function widths(sheet: components['schemas']['TargetSheet']): string {
  const verdicts: ('fine' | 'tight' | 'fails' | 'poor' | 'unknown' | 'n/a')[] = sheet.checks.map(({ verdict }) => verdict);
  const lines = sheet.assembled.map((dimension) => {
    if (dimension.value === null) return dimension.noAdvice?.reason ?? '';
    const range: number = (dimension.high ?? 0) - (dimension.low ?? 0);
    return dimension.name + dimension.value.toFixed(1) + range.toFixed(1);
  });
  return [...lines, ...verdicts].join();
}
`;

describe('types from a stock generator', () => {
  let types: string;
  beforeAll(async () => {
    const document = JSON.parse(readFileSync('apps/api/openapi.json', 'utf8')) as object;
    types = astToString(await openapiTS(document as Parameters<typeof openapiTS>[0]));
  });

  /** What the compiler says of a program beside the types, strictly. */
  const complaints = (text: string): string[] => {
    const folder = import.meta.dirname;
    const files = new Map([
      [join(folder, 'api.ts'), types],
      [join(folder, 'program.ts'), text],
    ]);
    const options: ts.CompilerOptions = {
      strict: true,
      noEmit: true,
      skipLibCheck: true,
      allowImportingTsExtensions: true,
      target: ts.ScriptTarget.ES2022,
      module: ts.ModuleKind.ESNext,
      moduleResolution: ts.ModuleResolutionKind.Bundler,
      types: [],
    };
    const host = ts.createCompilerHost(options);
    const { fileExists, readFile, getSourceFile } = host;
    host.fileExists = (file) => files.has(file) || fileExists(file);
    host.readFile = (file) => files.get(file) ?? readFile(file);
    host.getSourceFile = (file, version, ...rest) => {
      const own = files.get(file);
      return own === undefined ? getSourceFile(file, version, ...rest) : ts.createSourceFile(file, own, version);
    };
    const compiled = ts.createProgram([...files.keys()], options, host);
    return ts
      .getPreEmitDiagnostics(compiled)
      .map(({ messageText }) => ts.flattenDiagnosticMessageText(messageText, ' '));
  };

  it('compile README’s request, narrow a sheet and its dimensions, and know what would be refused', () => {
    const body = /-d '(\{.*?\})'\n```/s.exec(readFileSync('README.md', 'utf8'))?.[1] ?? '';
    expect(body).toContain('chest-girth');
    expect(complaints(program(body))).toEqual([]);
  });
});
