import type { PostResult } from './post.ts';

/**
 * What an answer means (Standard Webhooks 1.0.0): 2xx has arrived; 410 asks to be sent nothing more; 429, 502 and 504
 * ask to slow down; anything else, a redirect too, is tried again.
 */
type Verdict = 'arrived' | 'gone' | 'slow-down' | 'try-again';

export function verdictOf(result: PostResult): Verdict {
  if ('failure' in result) return 'try-again';
  const { status } = result;
  if (status >= 200 && status < 300) return 'arrived';
  if (status === 410) return 'gone';
  return status === 429 || status === 502 || status === 504 ? 'slow-down' : 'try-again';
}
