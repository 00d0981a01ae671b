import { useEffect, useState } from 'react';
import { Wide } from '../ui/Wide.tsx';
import { say } from '../messages.ts';
import { handOffsTo, sendAgain, type HandOffWithAttempts, type Planner } from '../api/planner-repository.ts';
import { ErrorList } from './ErrorList.tsx';
import { useRequest } from './use-request.ts';
import textStyles from '../ui/text.module.css';
import list from '../kept/KeptList.module.css';

/** How often waiting hand-offs are polled. */
const LOOK_MS = 2000;

const timeOf = (rfc3339: string): string => new Date(rfc3339).toLocaleString(navigator.language);

/** The latest hand-offs to a planner with their attempts, and a button to resend one that was given up. */
export function HandOffs({
  planner,
  sent,
}: {
  readonly planner: Planner;
  /** Increases with each sheet sent. */ readonly sent: number;
}) {
  const words = say.send.sent;
  const [handOffs, look] = useHandOffs(planner, sent);
  const { busy, errors, run } = useRequest();
  if (handOffs.length === 0) return null;
  return (
    <section aria-labelledby="sent-title">
      <h3 id="sent-title">{words.title}</h3>
      <ul className={list.list}>
        {handOffs.map((handOff) => (
          <li key={handOff.id}>
            <p role="status">
              {timeOf(handOff.createdAt)}: <strong>{words.state[handOff.state]}</strong>{' '}
              {handOff.state === 'waiting' && handOff.tries > 0 && handOff.nextTryAt !== null && (
                <span className={textStyles.hint}>{words.next(timeOf(handOff.nextTryAt))}</span>
              )}
            </p>
            {handOff.state === 'dead' && (
              <button
                type="button"
                disabled={busy}
                onClick={() =>
                  run(async () => {
                    await sendAgain(handOff.id);
                    look();
                  })
                }
              >
                {words.again}
              </button>
            )}
            {handOff.attempts.length > 0 && <Attempts handOff={handOff} />}
          </li>
        ))}
      </ul>
      <ErrorList lines={errors} />
    </section>
  );
}

function Attempts({ handOff }: { readonly handOff: HandOffWithAttempts }) {
  const words = say.send.sent;
  return (
    <details>
      <summary>{words.tries(handOff.attempts.length)}</summary>
      <Wide label={words.table}>
        <table>
          <caption className={textStyles.visuallyHidden}>{words.table}</caption>
          <thead>
            <tr>
              {[words.column.at, words.column.outcome, words.column.answer].map((name) => (
                <th key={name} scope="col">
                  {name}
                </th>
              ))}
            </tr>
          </thead>
          <tbody>
            {handOff.attempts.map(({ at, status, failureText, answer }) => (
              <tr key={at}>
                <th scope="row">{timeOf(at)}</th>
                <td>{failureText ?? words.status(status ?? 0)}</td>
                <td>{answer}</td>
              </tr>
            ))}
          </tbody>
        </table>
      </Wide>
    </details>
  );
}

/** Loaded again after each hand-off, and polled while one waits. */
function useHandOffs(planner: Planner, sent: number): [readonly HandOffWithAttempts[], () => void] {
  const [handOffs, setHandOffs] = useState<readonly HandOffWithAttempts[]>([]);
  const [looks, setLooks] = useState(0);
  const look = (): void => setLooks((count) => count + 1);
  useEffect(() => {
    let wanted = true;
    let timer: ReturnType<typeof setTimeout> | undefined;
    handOffsTo(planner).then(
      (found) => {
        if (!wanted) return;
        setHandOffs(found);
        if (found.some(({ state }) => state === 'waiting')) timer = setTimeout(look, LOOK_MS);
      },
      () => wanted && (timer = setTimeout(look, LOOK_MS)),
    );
    return () => {
      wanted = false;
      clearTimeout(timer);
    };
  }, [planner, sent, looks]);
  return [handOffs, look];
}
