import { createParamDecorator, Injectable, type ExecutionContext, type PipeTransform } from '@nestjs/common';
import type { Request } from 'express';
import { LessThan, type EntityManager } from 'typeorm';
import { clock } from '../clock/steady-clock.ts';
import { SecretBox } from '../hand-off/signing/secret-box.ts';
import { Conflict } from '../storage/conflict.ts';
import { newId } from '../storage/new-id.ts';
import { fingerprintOf, idempotencyKeyOf, keyReused } from './idempotency-key.ts';
import { IDEMPOTENT_WRITE } from './idempotent-write.entity.ts';

type Work<T> = (manager: EntityManager) => Promise<T>;

const KEPT_MS = 24 * 3600 * 1000;

/** A request that makes something. With an Idempotency-Key it can be sent again, and what it makes is made once. */
export class IdempotentRequest {
  constructor(
    private readonly key: string | null,
    private readonly fingerprint: string,
    private readonly box: SecretBox,
  ) {}

  /**
   * Makes it in one unit of work (`unit`), with the note that it was made; or gives what was made for this key before, as it was then. `make`
   * gives plain data.
   *
   * @throws DomainError `idempotency-key-reused`, and of `make`
   */
  async once<T extends object>(
    unit: (work: Work<T>) => Promise<T>,
    makerId: string,
    make: Work<T>,
    idOf: (made: T) => string,
  ): Promise<T> {
    const { key } = this;
    if (key === null) return unit(make);
    const attempt = () => unit((manager) => this.makeOrFind(manager, makerId, key, make, idOf));
    try {
      return await attempt();
    } catch (error) {
      // The same request came twice at the same moment: now the other's note can be seen.
      if (error instanceof Conflict) return attempt();
      throw error;
    }
  }

  private async makeOrFind<T extends object>(
    manager: EntityManager,
    makerId: string,
    key: string,
    make: Work<T>,
    idOf: (made: T) => string,
  ): Promise<T> {
    const now = clock.now();
    const forgotten = new Date(now.getTime() - KEPT_MS).toISOString();
    await manager.delete(IDEMPOTENT_WRITE, { makerId, createdAt: LessThan(forgotten) });
    const before = await manager.findOneBy(IDEMPOTENT_WRITE, { makerId, key });
    if (before !== null && before.fingerprint !== this.fingerprint) throw keyReused();
    if (before !== null) return JSON.parse(this.box.open(before.made, ownerOf(makerId, key))) as T;
    const made = await make(manager);
    await manager.insert(IDEMPOTENT_WRITE, {
      id: newId(),
      makerId,
      key,
      fingerprint: this.fingerprint,
      createdAt: now.toISOString(),
      madeId: idOf(made),
      made: this.box.seal(JSON.stringify(made), ownerOf(makerId, key)),
    });
    return made;
  }
}

const ownerOf = (makerId: string, key: string): string => `${makerId} ${key}`;

/** Erases what was noted of a thing that is erased. */
export async function forgetMade(manager: EntityManager, makerId: string, madeId: string): Promise<void> {
  await manager.delete(IDEMPOTENT_WRITE, { makerId, madeId });
}

@Injectable()
class IdempotentRequestPipe implements PipeTransform<Request, IdempotentRequest> {
  constructor(private readonly box: SecretBox) {}

  transform(request: Request): IdempotentRequest {
    const key = idempotencyKeyOf(request);
    const { path, body } = request as { path: string; body: unknown };
    const fingerprint = key === null ? '' : fingerprintOf({ path, body: sorted(body) });
    return new IdempotentRequest(key, fingerprint, this.box);
  }
}

/** The same data with the keys of every object in one order. */
function sorted(value: unknown): unknown {
  if (Array.isArray(value)) return value.map(sorted);
  if (typeof value !== 'object' || value === null) return value;
  return Object.fromEntries(
    Object.entries(value)
      .sort(([a], [b]) => (a < b ? -1 : 1))
      .map(([key, inner]) => [key, sorted(inner)]),
  );
}

const RequestItself = createParamDecorator((_: unknown, context: ExecutionContext): Request =>
  context.switchToHttp().getRequest<Request>(),
);

/** The request of a handler that makes something. */
export const Idempotent = () => RequestItself(IdempotentRequestPipe);
