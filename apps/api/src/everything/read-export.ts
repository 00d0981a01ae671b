import { detailOf } from '../http/api-error.ts';
import { BODY_RECORD } from '#body';
import { FABRIC_RECORD } from '#fabric';
import { GARMENT_RECORD } from '#garment';
import { DomainError, storedRecord } from '#measure';
import { readSheet } from '#target-sheet';
import { BodyDto } from '../bodies/body.dto.ts';
import { FabricDto } from '../fabrics/fabric.dto.ts';
import { GarmentDto } from '../garments/garment.dto.ts';
import { AddressPolicy } from '../hand-off/addresses/address-policy.ts';
import { PLANNER_STATES, type PlannerRow, type SealedSecret } from '../hand-off/planners/planner.entity.ts';
import { PlannerDto } from '../hand-off/planners/planner.dto.ts';
import { readPlanner } from '../hand-off/planners/read-planner.ts';
import { hashOf, newKeyText } from '../hand-off/read-keys/key-text.ts';
import type { ReadKeyRow } from '../hand-off/read-keys/read-key.entity.ts';
import { importedSheetRow } from '../hand-off/sheet-import/sheet-import.ts';
import { InputPipe } from '../http/input.pipe.ts';
import { HttpProblem, type FieldError } from '../http/problem.ts';
import type { RecordRow } from '../records/record.entity.ts';
import { ComputeSheetDto } from '../target-sheets/sheet-request.dto.ts';
import { sheetRequest, storedSheetRequest } from '../target-sheets/sheet-request.ts';
import { requestFromEarlier } from '../target-sheets/request-from-earlier.ts';
import type { KeptGarmentVersion, TargetSheetRow } from '../target-sheets/target-sheet.entity.ts';
import { EXPORT_VERSIONS } from './export.dto.ts';
import { ImportFields } from './import-fields.ts';
import { readHandOffs, type HandOffRows } from './read-exported-hand-offs.ts';

/** The rows of everything that an export holds. */
export interface ExportRows extends HandOffRows {
  readonly bodies: readonly RecordRow[];
  readonly garments: readonly RecordRow[];
  readonly fabrics: readonly RecordRow[];
  readonly targetSheets: readonly TargetSheetRow[];
  readonly planners: readonly PlannerRow[];
  readonly readKeys: readonly ReadKeyRow[];
}

const KEPT = ['id', 'version', 'createdAt', 'updatedAt'];
const MOST = 2_147_483_647;

/** What a planner may be sent to is decided when it is sent. */
const ANY_ADDRESS = AddressPolicy.allowing('loopback,0.0.0.0/0,::/0');

/** Reads an export of this version: each part as if it were sent by itself. @throws HttpProblem 422 with every field that cannot be used */
export function readExport(makerId: string, json: unknown): ExportRows {
  const errors: FieldError[] = [];
  const top = new ImportFields(json, '', errors);
  top.choice('format', ['easewright/export']);
  top.choice('version', EXPORT_VERSIONS);
  mustBeReadable(errors);
  const checked = <T>(pointer: string, read: () => T): T | null => noting(errors, pointer, read);
  const kept = (item: unknown, pointer: string) => {
    const row = new ImportFields(item, pointer, errors);
    const [id, version] = [row.id('id'), row.whole('version', 1, MOST)];
    return { row, makerId, id, version, createdAt: row.time('createdAt'), updatedAt: row.time('updatedAt') };
  };
  const record =
    <D extends object>(dto: new () => D, stored: (dto: D) => object) =>
    (item: unknown, pointer: string): RecordRow => {
      const { row, ...columns } = kept(item, pointer);
      const document = checked(pointer, () => stored(asDto(dto, row.without(...KEPT))));
      return { ...columns, document };
    };
  const rows = {
    bodies: top.list(
      'bodies',
      record(BodyDto, (dto) => storedRecord(BODY_RECORD, dto)),
    ),
    garments: top.list(
      'garments',
      record(GarmentDto, (dto) => storedRecord(GARMENT_RECORD, dto)),
    ),
    fabrics: top.list(
      'fabrics',
      record(FabricDto, (dto) => storedRecord(FABRIC_RECORD, dto)),
    ),
    targetSheets: top.list('targetSheets', (item, pointer) => {
      const row = new ImportFields(item, pointer, errors);
      const inputs = new ImportFields(row.value('inputs'), `${pointer}/inputs`, errors);
      const sheet = checked(`${pointer}/sheet`, () => importedSheetRow(makerId, readSheet(row.value('sheet'))));
      const request = checked(`${pointer}/request`, () =>
        row.orNull('request', () =>
          storedSheetRequest(sheetRequest(asDto(ComputeSheetDto, requestFromEarlier(row.value('request'))))),
        ),
      );
      const input = (name: string) => ({
        [`${name}Id`]: inputs.orNull(`${name}Id`, () => inputs.id(`${name}Id`)),
        [`${name}Version`]: inputs.orNull(`${name}Version`, () => inputs.whole(`${name}Version`, 1, MOST)),
      });
      return {
        ...sheet,
        ...input('body'),
        garments: readGarments(inputs, errors),
        ...input('fabric'),
        request,
      } as TargetSheetRow;
    }),
    planners: top.list('planners', (item, pointer): PlannerRow => {
      const { row, ...columns } = kept(item, pointer);
      const document = checked(pointer, () =>
        readPlanner(asDto(PlannerDto, row.without(...KEPT, 'state', 'secretMadeAt', 'oldSecretUntil')), ANY_ADDRESS),
      );
      const madeAt = row.orNull('secretMadeAt', () => row.time('secretMadeAt'));
      const oldUntil = row.orNull('oldSecretUntil', () => row.time('oldSecretUntil'));
      const secrets: SealedSecret[] = [];
      // Secrets are in no export: what stands for them opens nothing, so that a new one has to be made.
      if (madeAt !== null) secrets.push({ sealed: '', madeAt, validUntil: null });
      if (madeAt !== null && oldUntil !== null) secrets.push({ sealed: '', madeAt, validUntil: oldUntil });
      const state = row.choice('state', PLANNER_STATES);
      return { ...columns, document, state, restingUntil: null, secrets } as PlannerRow;
    }),
  };
  const sheetIds = new Set(rows.targetSheets.map(({ id }) => id));
  const plannerIds = new Set(rows.planners.map(({ id }) => id));
  const readKeys = top.list('readKeys', (item, pointer): ReadKeyRow => {
    const row = new ImportFields(item, pointer, errors);
    return {
      id: row.id('id'),
      makerId,
      targetSheetId: row.orNull('targetSheetId', () => row.idOf('targetSheetId', sheetIds)),
      createdAt: row.time('createdAt'),
      title: row.text('title', 120),
      prefix: row.text('prefix', 20),
      hash: hashOf(newKeyText()), // of a key that nobody has
      expiresAt: row.orNull('expiresAt', () => row.time('expiresAt')),
      revokedAt: row.orNull('revokedAt', () => row.time('revokedAt')),
      lastUsedAt: row.orNull('lastUsedAt', () => row.time('lastUsedAt')),
    };
  });
  const all = { ...rows, readKeys, ...readHandOffs(top, makerId, { sheetIds, plannerIds }, errors) };
  for (const [name, list] of Object.entries(all)) mustDiffer(name, list, errors);
  mustBeReadable(errors);
  return all;
}

function asDto<D extends object>(dto: new () => D, value: unknown): D {
  return InputPipe.of(dto).transform(value, { type: 'body' }) as D;
}

/** The garments of a sheet's inputs; an export of 2.0 has one at most. */
function readGarments(inputs: ImportFields, errors: FieldError[]): readonly KeptGarmentVersion[] {
  if (inputs.value('garments') === undefined && inputs.value('garmentId') !== undefined) {
    const id = inputs.orNull('garmentId', () => inputs.id('garmentId'));
    return id === null ? [] : [{ id, version: inputs.whole('garmentVersion', 1, MOST) }];
  }
  return inputs.list('garments', (item, pointer) => {
    const garment = new ImportFields(item, pointer, errors);
    return { id: garment.id('id'), version: garment.whole('version', 1, MOST) };
  });
}

/** Notes what is wrong of a part where the part is. */
function noting<T>(errors: FieldError[], pointer: string, read: () => T): T | null {
  try {
    return read();
  } catch (error) {
    if (error instanceof DomainError) errors.push({ pointer: pointer + error.pointer, detail: detailOf(error) });
    else if (!(error instanceof HttpProblem)) throw error;
    else if (error.errors.length === 0) errors.push({ pointer, detail: error.message });
    else errors.push(...error.errors.map((each) => ({ ...each, pointer: pointer + (each.pointer ?? '') })));
    return null;
  }
}

function mustDiffer(name: string, rows: readonly { readonly id: string }[], errors: FieldError[]): void {
  const seen = new Set<string>();
  for (const [index, { id }] of rows.entries()) {
    if (seen.has(id)) errors.push({ pointer: `/${name}/${index}/id`, detail: 'must not be the id of another' });
    seen.add(id);
  }
}

function mustBeReadable(errors: readonly FieldError[]): void {
  if (errors.length > 0) throw new HttpProblem(422, 'invalid', 'This export cannot be read in; see errors.', errors);
}
