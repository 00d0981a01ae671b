import {
  applyDecorators,
  Injectable,
  UseInterceptors,
  type CallHandler,
  type ExecutionContext,
  type NestInterceptor,
} from '@nestjs/common';
import { ApiOkResponse, ApiProperty } from '@nestjs/swagger';
import type { Response } from 'express';
import { map, type Observable } from 'rxjs';
import { UnitOfWork } from './unit-of-work.ts';

/** What is left of something erased. */
class PendingErasureDto {
  @ApiProperty({ type: 'boolean', enum: [true], description: 'It is erased: nothing shows it any more.' })
  erased!: true;
  @ApiProperty({ type: 'string', enum: ['write-ahead-log'], description: 'Where its bytes still are.' })
  remainsIn!: 'write-ahead-log';
  @ApiProperty({ type: 'string', description: 'Until when.' })
  detail!: string;
}

const PENDING: PendingErasureDto = {
  erased: true,
  remainsIn: 'write-ahead-log',
  detail:
    'It is erased. Its bytes stay in the log of the database for as long as another program reads the database or the disk is full; the log is emptied as soon as that ends, and when the service stops.',
};

/** Answers 200 with what is left where an erasure is not complete yet, instead of 204. */
@Injectable()
class ErasureInterceptor implements NestInterceptor {
  constructor(private readonly work: UnitOfWork) {}

  intercept(context: ExecutionContext, next: CallHandler<void>): Observable<PendingErasureDto | void> {
    const response = context.switchToHttp().getResponse<Response>();
    return next.handle().pipe(
      map(() => {
        if (!this.work.isErasurePending) return undefined;
        response.status(200);
        return PENDING;
      }),
    );
  }
}

/** Marks an operation that erases: it answers 204, or 200 with what is left for the moment. */
export const ReportsErasure = (): MethodDecorator =>
  applyDecorators(
    UseInterceptors(ErasureInterceptor),
    ApiOkResponse({ description: 'Erased; for the moment its bytes are left in a file.', type: PendingErasureDto }),
  );
