import { memo } from 'react';
import { Choice } from '../field/Choice.tsx';
import { say } from '../messages.ts';
import { TAPES, type Tape } from '../notebook/typed.ts';
import { updateNotebook } from '../state/notebook.ts';
import { usePage } from '../state/page-store.ts';
import textStyles from '../ui/text.module.css';
import styles from './PageHeader.module.css';

/** The name of the page, and the choice between centimetres and inches. */
export const PageHeader = memo(function PageHeader({ tape }: { readonly tape: Tape }) {
  const browserSaves = usePage((state) => state.browserSaves);
  return (
    <header className={styles.header}>
      <h1>{say.name}</h1>
      <p>{say.motto}</p>
      <Choice
        legend={say.tape.legend}
        value={tape}
        options={TAPES.map((value) => ({ value, label: say.tape[value] }))}
        onValue={(value) => updateNotebook((it) => ({ ...it, tape: value }))}
      />
      {!browserSaves && <p className={textStyles.wrong}>{say.shelf.state.browserFull}</p>}
    </header>
  );
});
