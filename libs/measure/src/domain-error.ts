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
  /** The sentence itself, where it is not in the catalogue yet. */
  readonly sentence: string | null;

  constructor(code: string, params: Params | string, pointer = '') {
    const sentence = typeof params === 'string' ? params : null;
    super(sentence ?? (pointer === '' ? code : `${code} at ${pointer}`));
    this.name = 'DomainError';
    this.code = code;
    this.params = typeof params === 'string' ? {} : params;
    this.pointer = pointer;
    this.sentence = sentence;
  }

  /** The same error at another place of the input. */
  at(pointer: string): DomainError {
    return new DomainError(this.code, this.sentence ?? this.params, pointer);
  }

  /** The same error seen from one level further out: the pointer grows at its front. */
  under(prefix: string): DomainError {
    return this.at(prefix + this.pointer);
  }
}
