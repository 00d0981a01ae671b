import { DomainError } from './domain-error.ts';
import type { Params } from './message.ts';

/** Makes the errors of one lib. `Errors` maps each code to the parameters of its sentence, so that the compiler checks both. */
export function errorsOf<Errors>() {
  return <Code extends keyof Errors & string>(code: Code, params: Errors[Code], pointer = ''): DomainError =>
    new DomainError(code, params as Params, pointer);
}
