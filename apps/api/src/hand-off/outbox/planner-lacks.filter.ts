import { Catch, type ArgumentsHost, type ExceptionFilter } from '@nestjs/common';
import { detailOf } from '../../http/api-error.ts';
import type { Response } from 'express';
import { HttpProblem } from '../../http/problem.ts';
import { answerProblem } from '../../http/problem.filter.ts';
import { inWords, PlannerLacks } from './package.ts';

/** Reports everything a planner lacks at once, not the first only. */
@Catch(PlannerLacks)
export class PlannerLacksFilter implements ExceptionFilter<PlannerLacks> {
  catch(error: PlannerLacks, host: ArgumentsHost): void {
    const errors = error.missing.map((name) => ({ detail: inWords(name) }));
    const problem = new HttpProblem(422, error.code, detailOf(error), errors);
    answerProblem(problem, host.switchToHttp().getResponse<Response>());
  }
}
