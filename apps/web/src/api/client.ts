import createClient from 'openapi-fetch';
import type { paths } from '../api.generated.ts';

/** The client of the API that served this page. */
export const client = createClient<paths>({ baseUrl: location.origin });
