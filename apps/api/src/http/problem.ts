import { STATUS_CODES } from 'node:http';

/** One wrong field: where it is in the body (JSON Pointer, RFC 6901) or which parameter of the address it is, and what would be right. */
export interface FieldError {
  readonly pointer?: string;
  readonly parameter?: string;
  readonly detail: string;
}

/** More would help nobody, and a body of 64 kB can hold ten thousand. */
const MOST_ERRORS = 100;

/** A request that cannot be answered, on its way to a problem document. `code` is stable, lower-case with hyphens. */
export class HttpProblem extends Error {
  constructor(
    readonly status: number,
    readonly code: string,
    detail: string,
    readonly errors: readonly FieldError[] = [],
    /** When to try again, in seconds, where it is worth it. */
    readonly retryAfterS: number | null = null,
  ) {
    super(detail);
    this.name = 'HttpProblem';
  }

  /** The document of RFC 9457, with `code` and `errors` as its extensions. */
  toDocument() {
    return {
      type: 'about:blank',
      title: STATUS_CODES[this.status] ?? 'Error',
      status: this.status,
      code: this.code,
      detail: this.message,
      ...(this.errors.length > 0 && { errors: this.errors.slice(0, MOST_ERRORS) }),
    };
  }
}
