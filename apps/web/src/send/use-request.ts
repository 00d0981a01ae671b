import { useState } from 'react';
import { say } from '../messages.ts';
import { Refused } from '../api/planner-repository.ts';

/** Asking the store for something at the touch of a button. */
export interface Request {
  readonly busy: boolean;
  /** What went wrong the last time, line by line. */
  readonly errors: readonly string[];
  run(work: () => Promise<void>): void;
}

export function useRequest(): Request {
  const [busy, setBusy] = useState(false);
  const [errors, setTrouble] = useState<readonly string[]>([]);
  const run = (work: () => Promise<void>): void => {
    setBusy(true);
    setTrouble([]);
    work()
      .catch((error: unknown) => setTrouble(error instanceof Refused ? error.reasons : [say.send.lost]))
      .finally(() => setBusy(false));
  };
  return { busy, errors, run };
}
