import type { Params } from './message.ts';

/**
 * Input that cannot be used, as data: a stable code (lower-case, hyphens), the values its sentence needs, and a JSON
 * Pointer (RFC 6901) to the place in the input. The sentence is in `advice-text`. `message` is for developers and holds no
 * parameters, since they may be body measurements and messages reach logs.
 */
export class DomainError extends Error {
  readonly code: string;
  readonly params: Params;
  readonly pointer: string;

  constructor(code: string, params: Params, pointer = '') {
    super(pointer === '' ? code : `${code} at ${pointer}`);
    this.name = 'DomainError';
    this.code = code;
    this.params = params;
    this.pointer = pointer;
  }

  /** The same error at another place of the input. */
  at(pointer: string): DomainError {
    return new DomainError(this.code, this.params, pointer);
  }

  /** The same error seen from one level further out: the pointer grows at its front. */
  under(prefix: string): DomainError {
    return this.at(prefix + this.pointer);
  }
}
