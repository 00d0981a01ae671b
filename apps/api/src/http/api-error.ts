import { errorText } from '#advice-text';
import { DomainError } from '#measure';

/** What the API itself refuses, in its own words; a lib refuses by a code, whose words are in `advice-text`. */
export class ApiError extends DomainError {
  constructor(
    code: string,
    readonly detail: string,
    pointer = '',
  ) {
    super(code, {}, pointer);
  }

  override at(pointer: string): ApiError {
    return new ApiError(this.code, this.detail, pointer);
  }
}

/** What a maker reads of an error, of the API's own or of a lib. */
export const detailOf = (error: DomainError): string => (error instanceof ApiError ? error.detail : errorText(error));
