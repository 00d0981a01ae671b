import { ApiError } from './api-error.ts';

/** The error of an id that names nothing, and where those that do are listed. */
export const noSuch = (what: string, list: string): ApiError =>
  new ApiError('not-found', `There is no ${what} with this id; GET ${list} lists those there are.`);
