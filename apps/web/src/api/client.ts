import createClient from 'openapi-fetch';
import type { paths } from '../api.generated.ts';

/** The store: the API this page was served from. */
export const client = createClient<paths>({ baseUrl: location.origin });
