import { useState } from 'react';
import { say } from '../messages.ts';
import { Refused } from './send-store.ts';

/** Asking the store for something at the touch of a button. */
export interface Asking {
  readonly busy: boolean;
  /** What went wrong the last time, line by line. */
  readonly trouble: readonly string[];
  ask(work: () => Promise<void>): void;
}

export function useAsking(): Asking {
  const [busy, setBusy] = useState(false);
  const [trouble, setTrouble] = useState<readonly string[]>([]);
  const ask = (work: () => Promise<void>): void => {
    setBusy(true);
    setTrouble([]);
    work()
      .catch((error: unknown) => setTrouble(error instanceof Refused ? error.reasons : [say.send.lost]))
      .finally(() => setBusy(false));
  };
  return { busy, trouble, ask };
}
