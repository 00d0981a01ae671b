import { useState } from 'react';
import { say } from '../messages.ts';
import {
  makeSecret,
  pausePlanner,
  removePlanner,
  resumePlanner,
  testPlanner,
  type Planner,
} from '../api/planner-repository.ts';
import { Secret } from './Secret.tsx';
import { ErrorList } from './ErrorList.tsx';
import { useRequest } from './use-request.ts';
import buttonStyles from '../ui/buttons.module.css';
import textStyles from '../ui/text.module.css';
import styles from './PlannerCard.module.css';

/** A planner and the buttons for it. */
export function PlannerCard({
  planner,
  secret,
  onPlanner,
  onSecret,
  onEdit,
  onGone,
}: {
  readonly planner: Planner;
  /** A new signing secret; it is shown only once. */
  readonly secret: string | null;
  readonly onPlanner: (planner: Planner) => void;
  readonly onSecret: (secret: string | null) => void;
  readonly onEdit: () => void;
  readonly onGone: () => void;
}) {
  const words = say.send.planner;
  const { busy, errors, run } = useRequest();
  const [told, setTold] = useState('');
  const doing = (work: () => Promise<void>) => () => {
    setTold('');
    run(work);
  };
  const test = doing(async () => {
    const { arrived, status, failureText } = await testPlanner(planner);
    setTold(arrived ? words.tested : (failureText ?? words.answered(status ?? 0)));
  });
  const newSecret = doing(async () => {
    const { secret: made, ...changed } = await makeSecret(planner);
    onPlanner(changed);
    onSecret(made);
  });
  const running = planner.state === 'active';
  return (
    <div className={styles.planner}>
      <p>
        {planner.address ?? words.byHand} <span className={textStyles.hint}>{words.state[planner.state]}</span>
      </p>
      <div className={buttonStyles.row}>
        <button type="button" className={buttonStyles.quiet} onClick={onEdit}>
          {words.edit}
        </button>
        {planner.address != null && (
          <>
            <button type="button" className={buttonStyles.quiet} disabled={busy} onClick={test}>
              {words.test}
            </button>
            <button
              type="button"
              className={buttonStyles.quiet}
              disabled={busy}
              onClick={doing(async () => onPlanner(await (running ? pausePlanner : resumePlanner)(planner)))}
            >
              {running ? words.pause : words.resume}
            </button>
            <button type="button" className={buttonStyles.quiet} disabled={busy} onClick={newSecret}>
              {words.newSecret}
            </button>
          </>
        )}
        <button
          type="button"
          className={buttonStyles.quiet}
          disabled={busy}
          onClick={doing(async () => {
            await removePlanner(planner);
            onGone();
          })}
        >
          {words.remove}
        </button>
        <span role="status" className={textStyles.hint}>
          {told}
        </span>
      </div>
      {secret !== null && <Secret secret={secret} until={planner.oldSecretUntil} />}
      <ErrorList lines={errors} />
    </div>
  );
}
