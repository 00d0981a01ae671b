import { memo } from 'react';
import { Choice } from '../field/Choice.tsx';
import { say } from '../messages.ts';
import { TAPES, type Tape } from '../notebook/typed.ts';
import { change, useBrowserKeeps } from '../state/notebook.ts';

/** The name, and the tape in her hand. */
export const PageHeader = memo(function PageHeader({ tape }: { readonly tape: Tape }) {
  const browserKeeps = useBrowserKeeps();
  return (
    <header className="top">
      <h1>{say.name}</h1>
      <p>{say.motto}</p>
      <Choice
        legend={say.tape.legend}
        value={tape}
        options={TAPES.map((value) => ({ value, label: say.tape[value] }))}
        onValue={(value) => change((it) => ({ ...it, tape: value }))}
      />
      {!browserKeeps && <p className="wrong">{say.shelf.state.browserFull}</p>}
    </header>
  );
});
