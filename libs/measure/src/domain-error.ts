/**
 * A broken precondition, said so that a maker can mend it: what was read, where, and what would be right.
 * `code` is stable and lower-case with hyphens; `pointer` is a JSON Pointer (RFC 6901) into the input, where there is one.
 */
export class DomainError extends Error {
  readonly code: string;
  readonly pointer: string;

  constructor(code: string, message: string, pointer = '') {
    super(message);
    this.name = 'DomainError';
    this.code = code;
    this.pointer = pointer;
  }

  /** The same error seen from one level further out: the pointer grows at its front. */
  under(prefix: string): DomainError {
    return new DomainError(this.code, this.message, prefix + this.pointer);
  }
}
