import { Injectable, type ArgumentMetadata, type PipeTransform } from '@nestjs/common';
import { plainToInstance } from 'class-transformer';
import { getMetadataStorage, validateSync, type ValidationError, type ValidatorOptions } from 'class-validator';
import { crossFieldErrors } from './cross-field.ts';
import { isOfEveryObject } from './of-every-object.ts';
import { HttpProblem, type FieldError } from './problem.ts';

const OPTIONS: ValidatorOptions = {
  whitelist: true,
  forbidNonWhitelisted: true,
  stopAtFirstError: true,
  validationError: { target: true, value: false },
};

/** Makes the DTO of a body or a query and gathers every wrong field of it. @throws HttpProblem 422 (body) or 400 (query) */
@Injectable()
export class InputPipe implements PipeTransform {
  /** For a body whose class the handler's types do not give. */
  static of(dto: new () => object): PipeTransform {
    const pipe = new InputPipe();
    return {
      transform: (value: unknown, { type }: ArgumentMetadata) => pipe.transform(value, { metatype: dto, type }),
    };
  }

  transform(value: unknown, { metatype, type }: ArgumentMetadata): unknown {
    if (metatype === undefined || !isDto(metatype)) return value;
    if (type === 'body' && !isPlainObject(value)) {
      throw new HttpProblem(400, 'unreadable', 'The body must be a JSON object: { … }.');
    }
    const dto = plainToInstance(metatype as new () => object, value ?? {}) as object;
    const errors = validateSync(dto, OPTIONS);
    if (type !== 'body') refuseWrongParameters(dto, errors, Object.keys(value ?? {}));
    const wrong = errors.flatMap((error) => fieldErrors(error, ''));
    wrong.push(...crossFieldErrors(dto, new Set(wrong.map(({ pointer }) => pointer ?? ''))));
    if (wrong.length === 0) return dto;
    const detail = wrong.length === 1 ? 'One field cannot be used' : `${wrong.length} fields cannot be used`;
    throw new HttpProblem(422, 'invalid', `${detail}; see errors.`, wrong);
  }
}

/** Classes whose properties carry validators. Texts, numbers and what has its own pipe pass. */
function isDto(metatype: NonNullable<ArgumentMetadata['metatype']>): boolean {
  return metadataOf(metatype).length > 0;
}

const metadataOf = (type: object) =>
  getMetadataStorage().getTargetValidationMetadatas(type as new () => object, '', true, false);

function isPlainObject(value: unknown): boolean {
  return typeof value === 'object' && value !== null && !Array.isArray(value);
}

function refuseWrongParameters(target: object, errors: readonly ValidationError[], names: readonly string[]): void {
  // Names that every object has are passed over where the DTO is made.
  const wrong = [
    ...names.filter(isOfEveryObject).map((name) => ({ parameter: name, detail: noSuchName({ target }) })),
    ...errors.map((error) => ({ parameter: error.property.slice(0, 80), detail: detailOf(error) })),
  ];
  if (wrong.length === 0) return;
  const detail = wrong.length === 1 ? 'One parameter cannot be used' : `${wrong.length} parameters cannot be used`;
  throw new HttpProblem(400, 'invalid-parameter', `${detail}; see errors.`, wrong);
}

function fieldErrors(error: ValidationError, above: string): FieldError[] {
  const pointer = `${above}/${error.property.slice(0, 80).replaceAll('~', '~0').replaceAll('/', '~1')}`;
  if (error.constraints !== undefined) return [{ pointer, detail: detailOf(error) }];
  return (error.children ?? []).flatMap((child) => fieldErrors(child, pointer));
}

function detailOf(error: ValidationError): string {
  const [kind, message] = Object.entries(error.constraints ?? {})[0] ?? ['', ''];
  return kind === 'whitelistValidation' ? noSuchName(error) : message;
}

/** Where a DTO has more names than this, the documentation is the place to look. */
const MOST_NAMES = 20;

function noSuchName({ target }: Pick<ValidationError, 'target'>): string {
  const type: unknown = target?.constructor;
  // A query may call one of its parameters `constructor`: then it is a text.
  const known = typeof type === 'function' ? metadataOf(type) : [];
  const names = new Set(known.map(({ propertyName }) => propertyName));
  const others = names.size > 0 && names.size <= MOST_NAMES ? `there are ${[...names].join(', ')}` : 'see /docs';
  return `there is no such name here; ${others}`;
}
