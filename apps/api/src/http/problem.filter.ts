import { Catch, NotFoundException, type ArgumentsHost, type ExceptionFilter } from '@nestjs/common';
import type { NextFunction, Request, Response } from 'express';
import { requestIdOf } from '../log/request-log.ts';
import { wrongMethod } from './check-method.ts';
import { methodsAt } from './methods-at.ts';
import { problemOf } from './problem-of.ts';

/** Answers whatever was thrown in a controller, or below it, with a problem document. */
@Catch()
export class ProblemFilter implements ExceptionFilter {
  catch(error: unknown, host: ArgumentsHost): void {
    const http = host.switchToHttp();
    const response = http.getResponse<Response>();
    const { app, path } = http.getRequest<Request>();
    // Nest throws this where no route takes a request; what is not there of ours is a problem of its own.
    const methods = error instanceof NotFoundException ? methodsAt(app, path) : [];
    answerProblem(methods.length > 0 ? wrongMethod(methods, response) : error, response);
  }
}

/** The same for what goes wrong before a controller is reached: express's error handler, last of the handlers in front of the API. */
export function problemHandler(error: unknown, _request: Request, response: Response, _next: NextFunction): void {
  answerProblem(error, response);
}

export function answerProblem(error: unknown, response: Response): void {
  const problem = problemOf(error, requestIdOf(response));
  if (response.headersSent) return void response.destroy();
  response.removeHeader('ETag');
  response.setHeader('Cache-Control', 'no-store');
  if (problem.retryAfterS !== null) response.setHeader('Retry-After', String(problem.retryAfterS));
  response.status(problem.status).type('application/problem+json').send(JSON.stringify(problem.toDocument()));
}
