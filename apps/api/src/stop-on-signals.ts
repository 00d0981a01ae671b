/** Past the deadline, closing the database and the last writes have so long. */
const GRACE_MS = 5_000;
const LOOK_MS = 500;

/**
 * Stops the process on SIGTERM, SIGINT (Ctrl-C) and SIGHUP, and at once on a second one. SIGUSR2, which some supervisors send
 * for other reasons, does nothing.
 */
export function stopOnSignals(stop: () => Promise<void>, deadlineMs: number): void {
  let isStopping = false;
  const onSignal = (): void => {
    if (isStopping) process.exit(1);
    isStopping = true;
    setTimeout(() => process.exit(1), deadlineMs + GRACE_MS).unref();
    void stop().then(
      () => process.exit(0),
      () => process.exit(1),
    );
  };
  for (const signal of ['SIGTERM', 'SIGINT', 'SIGHUP'] as const) process.on(signal, onSignal);
  if (process.platform !== 'win32') process.on('SIGUSR2', () => undefined);
  if (process.env['npm_lifecycle_event'] === 'start') onParentEnded(onSignal);
}

/** `npm start` passes a SIGTERM on to the shell between, which ends without passing it on. */
function onParentEnded(stop: () => void): void {
  const { ppid } = process;
  const looking = setInterval(() => {
    if (process.ppid === ppid) return;
    clearInterval(looking);
    stop();
  }, LOOK_MS).unref();
}
