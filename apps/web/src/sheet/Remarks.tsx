import { memo } from 'react';
import type { TargetSheet } from '#target-sheet';
import { say } from '../messages.ts';
import { TO_MAKE } from './to-make.ts';
import styles from './Remarks.module.css';

/** Cautions, conflicting choices, and notes. */
export const Remarks = memo(function Remarks({ sheet }: { readonly sheet: TargetSheet }) {
  const words = say.sheet;
  const notes = sheet.notes.filter(({ code }) => !TO_MAKE.includes(code));
  return (
    <>
      {sheet.cautions.length > 0 && (
        <section className={styles.cautions}>
          <h3>{words.cautions}</h3>
          <ul>
            {sheet.cautions.map(({ code, text }) => (
              <li key={code}>{text}</li>
            ))}
          </ul>
        </section>
      )}
      {sheet.collisions.length > 0 && (
        <section>
          <h3>{words.collisions}</h3>
          <ul>
            {sheet.collisions.map(({ wishes, dimension }) => (
              <li key={`${dimension} ${wishes[0].text}`}>{words.collide(wishes[0].text, wishes[1].text)}</li>
            ))}
          </ul>
        </section>
      )}
      {notes.length > 0 && (
        <details className={styles.notes}>
          <summary>
            {words.notes} ({notes.length})
          </summary>
          <ul>
            {notes.map(({ code, text, source }) => (
              <li key={`${code} ${text}`}>
                {text} {source !== undefined && <small>{source}</small>}
              </li>
            ))}
          </ul>
        </details>
      )}
    </>
  );
});
