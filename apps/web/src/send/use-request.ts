import { useState } from 'react';
import { say } from '../messages.ts';
import { Refused } from '../api/planner-repository.ts';

/** A request to the API at the press of a button. */
interface Request {
  readonly busy: boolean;
  /** The errors of the last request, line by line. */
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
