import { Catch, type ArgumentsHost, type ExceptionFilter } from '@nestjs/common';
import type { NextFunction, Request, Response } from 'express';
import { problemOf } from './problem-of.ts';

/** Answers whatever was thrown in a controller, or below it, with a problem document. */
@Catch()
export class ProblemFilter implements ExceptionFilter {
  catch(error: unknown, host: ArgumentsHost): void {
    answerProblem(error, host.switchToHttp().getResponse<Response>());
  }
}

/** The same for what goes wrong before a controller is reached: express's error handler, last of the handlers in front of the API. */
export function problemHandler(error: unknown, _request: Request, response: Response, _next: NextFunction): void {
  answerProblem(error, response);
}

export function answerProblem(error: unknown, response: Response): void {
  const problem = problemOf(error);
  if (response.headersSent) return void response.destroy();
  response.removeHeader('ETag');
  response.status(problem.status).type('application/problem+json').send(JSON.stringify(problem.toDocument()));
}
