import { applyDecorators } from '@nestjs/common';
import { ApiExtraModels, ApiResponse, getSchemaPath } from '@nestjs/swagger';
import { ProblemDto } from './problem.dto.ts';

const WORDS: Readonly<Record<number, string>> = {
  400: 'Not readable: the place in the text, or the parameter.',
  401: 'The read key opens nothing.',
  403: 'The read key opens something else.',
  404: 'There is none with this id.',
  406: 'None of the formats accepted can be given.',
  409: 'Not in the state it is in.',
  412: 'It has been changed since it was read.',
  413: 'The body is too large: 64 kB at most, 512 kB for a sheet that is read in.',
  415: 'The body is not JSON in UTF-8.',
  422: 'Fields that cannot be used, all of them, with their places.',
  428: 'The header If-Match is missing.',
};

/** Documents the problems that an operation answers with. Those of every operation (wrong host, a fault) are added to the whole document. */
export function ApiProblems(...statuses: readonly number[]): MethodDecorator & ClassDecorator {
  return applyDecorators(
    ApiExtraModels(ProblemDto),
    ...statuses.map((status) => ApiResponse({ status, ...problemContent(WORDS[status] ?? '') })),
  );
}

/** Problems of every operation that reads a body. */
export const BODY_PROBLEMS = [400, 413, 415, 422];

export function problemContent(description: string) {
  return { description, content: { 'application/problem+json': { schema: { $ref: getSchemaPath(ProblemDto) } } } };
}
