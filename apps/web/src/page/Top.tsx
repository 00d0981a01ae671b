import { memo } from 'react';
import { Choice } from '../field/Choice.tsx';
import { say } from '../messages.ts';
import { TAPES, type Tape } from '../notebook/typed.ts';
import { change, useBrowserKeeps } from '../notebook/use-notebook.ts';

const PARTS = [
  ['body', say.body.title],
  ['garment', say.garment.title],
  ['yarn', say.yarn.title],
  ['design', say.design.title],
  ['sheet', say.sheet.title],
  ['made', say.made.title],
  ['keep', say.keep.title],
  ['send', say.send.title],
] as const;

/** The name, the tape in her hand, and the way to each part. */
export const Top = memo(function Top({ tape }: { readonly tape: Tape }) {
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
      <nav aria-label={say.contents}>
        <ol>
          {PARTS.map(([id, title]) => (
            <li key={id}>
              <a href={`#${id}`}>{title}</a>
            </li>
          ))}
        </ol>
      </nav>
      {!browserKeeps && <p className="wrong">{say.shelf.state.browserFull}</p>}
    </header>
  );
});
