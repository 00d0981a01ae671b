import { useEffect, useState } from 'react';
import { Select } from '../field/Select.tsx';
import type { KeptSheet } from '../notebook/kept-sheet.ts';
import { distinctNames } from '../kept/distinct-names.ts';
import { saveText } from '../kept/export-text.ts';
import { say } from '../messages.ts';
import { newKey } from '../notebook/new-key.ts';
import { nameOf } from './name-of.ts';
import { handOn, previewFor, Refused, type Planner, type Preview } from '../api/planner-repository.ts';
import { ErrorList } from './ErrorList.tsx';
import { useRequest } from './use-request.ts';
import { usePage } from '../state/page-store.ts';
import buttonStyles from '../ui/buttons.module.css';
import styles from './HandOver.module.css';

type Looked =
  { readonly is: 'preview'; readonly preview: Preview } | { readonly is: 'not'; readonly reasons: readonly string[] };

/** Chooses a kept sheet, shows the exact payload, and sends it. */
export function HandOver({
  planner,
  sheets,
  onSent,
}: {
  readonly planner: Planner;
  readonly sheets: readonly KeptSheet[];
  readonly onSent: () => void;
}) {
  const words = say.send.over;
  const names = distinctNames(sheets, usePage((state) => state.notebook).tape);
  const stored = sheets.flatMap((sheet, i) =>
    sheet.stored === null ? [] : [{ id: sheet.stored, title: names[i]?.line ?? '' }],
  );
  const [chosen, setChosen] = useState('');
  const sheet = stored.some(({ id }) => id === chosen) ? chosen : (stored[0]?.id ?? '');
  const looked = usePreview(planner, sheet);
  // One idempotency key for each hand-off: pressed twice, or retried after a lost connection, it is sent once.
  const [key, setKey] = useState(newKey);
  const { busy, errors, run } = useRequest();
  if (sheet === '') return <p>{words.none}</p>;
  const send = (): void =>
    run(async () => {
      await handOn(sheet, planner.id, key);
      setKey(newKey());
      onSent();
    });
  return (
    <>
      <Select
        label={words.sheet}
        options={stored.map(({ id, title }) => ({ value: id, label: title }))}
        value={sheet}
        onValue={(id) => {
          setChosen(id);
          setKey(newKey());
        }}
      />
      {looked?.is === 'not' && (
        <>
          <p>{words.lacks}</p>
          <ErrorList lines={looked.reasons} />
        </>
      )}
      {looked?.is === 'preview' && <Leaving preview={looked.preview} />}
      <div className={buttonStyles.row}>
        {planner.address == null ? (
          looked?.is === 'preview' && (
            <button type="button" className={buttonStyles.primary} onClick={() => download(looked.preview)}>
              {words.download}
            </button>
          )
        ) : (
          <button
            type="button"
            className={buttonStyles.primary}
            disabled={busy || looked?.is !== 'preview' || planner.state === 'stopped'}
            onClick={send}
          >
            {words.send(planner.title)}
          </button>
        )}
      </div>
      <ErrorList lines={errors} />
    </>
  );
}

/** The exact payload. */
function Leaving({ preview: { contentType, body, warnings } }: { readonly preview: Preview }) {
  const words = say.send.over;
  return (
    <>
      <label className={styles.payload}>
        {words.leaving(contentType.split(';')[0] ?? '')}
        <textarea readOnly rows={6} value={body} />
      </label>
      {warnings.length > 0 && (
        <details>
          <summary>{words.warnings(warnings.length)}</summary>
          <ul>
            {warnings.map(({ name, message }) => (
              <li key={name + message}>
                {nameOf(name)}: {message}
              </li>
            ))}
          </ul>
        </details>
      )}
    </>
  );
}

/** Requested again when the planner or the sheet changes; null until the answer has come. */
function usePreview(planner: Planner, sheet: string): Looked | null {
  const asked = `${planner.id} ${planner.version} ${sheet}`;
  const [answer, setAnswer] = useState<{ readonly to: string; readonly looked: Looked } | null>(null);
  useEffect(() => {
    if (sheet === '') return undefined;
    let wanted = true;
    const take = (looked: Looked): void => {
      if (wanted) setAnswer({ to: asked, looked });
    };
    previewFor(planner, sheet).then(
      (preview) => take({ is: 'preview', preview }),
      (error: unknown) => take({ is: 'not', reasons: error instanceof Refused ? error.reasons : [say.send.lost] }),
    );
    return () => {
      wanted = false;
    };
  }, [planner, sheet, asked]);
  return answer?.to === asked ? answer.looked : null;
}

const download = ({ contentType, body }: Preview): void =>
  saveText(say.keep.file, contentType.startsWith('text/csv') ? 'csv' : 'json', contentType, body);
