import { Body, Controller, Inject, Query, Res, type Type } from '@nestjs/common';
import { ApiBody, ApiTags } from '@nestjs/swagger';
import type { Response } from 'express';
import { storedRecord, type RecordOf, type RecordSchema, type StoredRecord } from '#measure';
import { Id } from '../http/id.ts';
import { IfMatch } from '../http/if-match.ts';
import { InputPipe } from '../http/input.pipe.ts';
import { PageQuery } from '../http/page.ts';
import { Idempotent, IdempotentRequest } from '../idempotency/idempotent-request.ts';
import { MakerId } from '../maker/maker-id.ts';
import { answerWith, keptPage } from './answer.ts';
import type { KeptRecords } from './kept-records.ts';
import { Creates, Erases, Lists, Reads, Replaces } from './record-endpoints.ts';

/** What is particular to one kind of record. */
interface RecordKind<S extends RecordSchema> {
  /** In the address: `bodies`. */
  readonly path: string;
  /** In the documentation: `a body`. */
  readonly what: string;
  readonly schema: S;
  readonly dto: Type<RecordOf<S>>;
  readonly kept: Type;
  readonly page: Type;
  readonly records: Type<KeptRecords<StoredRecord<S>>>;
}

/** The five endpoints of a kind of record. */
export function recordsController<S extends RecordSchema>(kind: RecordKind<S>): Type {
  const { path, what, schema, dto: dtoClass, kept, page: pageClass } = kind;

  @ApiTags(path)
  @Controller(`v1/${path}`)
  class RecordsController {
    constructor(@Inject(kind.records) private readonly records: KeptRecords<StoredRecord<S>>) {}

    @Creates(what, kept)
    @ApiBody({ type: dtoClass })
    async create(
      @MakerId() maker: string,
      @Body(InputPipe.of(dtoClass)) dto: RecordOf<S>,
      @Idempotent() request: IdempotentRequest,
      @Res({ passthrough: true }) response: Response,
    ) {
      const row = await this.records.create(maker, storedRecord(schema, dto), request);
      response.location(`/v1/${path}/${row.id}`);
      return answerWith(response, row);
    }

    @Lists(path, pageClass)
    async list(@MakerId() maker: string, @Query() page: PageQuery) {
      return keptPage(await this.records.list(maker, page));
    }

    @Reads(what, kept)
    async read(@MakerId() maker: string, @Id() id: string, @Res({ passthrough: true }) response: Response) {
      return answerWith(response, await this.records.read(maker, id));
    }

    @Replaces(what, kept)
    @ApiBody({ type: dtoClass })
    async replace(
      @MakerId() maker: string,
      @Id() id: string,
      @IfMatch() ifMatch: string | undefined,
      @Body(InputPipe.of(dtoClass)) dto: RecordOf<S>,
      @Res({ passthrough: true }) response: Response,
    ) {
      return answerWith(response, await this.records.replace(maker, id, storedRecord(schema, dto), ifMatch));
    }

    @Erases(what)
    remove(@MakerId() maker: string, @Id() id: string, @IfMatch() ifMatch: string | undefined) {
      return this.records.remove(maker, id, ifMatch);
    }
  }
  // The documentation names operations by their class.
  return Object.defineProperty(RecordsController, 'name', { value: `${path}Controller` });
}
