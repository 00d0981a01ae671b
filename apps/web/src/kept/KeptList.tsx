import { useState } from 'react';
import type { TargetSheet } from '#target-sheet';
import { say } from '../messages.ts';
import type { Tape } from '../notebook/typed.ts';
import { offerUndo, changeWithUndo } from '../state/undo.ts';
import type { KeptSheet } from '../notebook/kept-sheet.ts';
import { distinctNames, titleOf, type SheetName } from './distinct-names.ts';
import { ExportButtons } from './ExportButtons.tsx';
import { updateKeptSheets } from '../state/kept-sheets.ts';
import buttonStyles from '../ui/buttons.module.css';
import textStyles from '../ui/text.module.css';
import styles from './KeptList.module.css';

/** The id of the title of the list. */
export const KEPT_TITLE = 'keep-kept';

/** The kept sheets, newest first, each with where it is stored and its buttons. */
export function KeptList({ sheets, tape }: { readonly sheets: readonly KeptSheet[]; readonly tape: Tape }) {
  if (sheets.length === 0) return <p>{say.keep.none}</p>;
  const names = distinctNames(sheets, tape);
  return (
    <ul className={styles.list} aria-labelledby={KEPT_TITLE}>
      {sheets.map((sheet, i) => (
        <KeptOne key={sheet.key} kept={sheet} name={names[i]} tape={tape} />
      ))}
    </ul>
  );
}

function KeptOne({
  kept,
  name,
  tape,
}: {
  readonly kept: KeptSheet;
  readonly name: SheetName | undefined;
  readonly tape: Tape;
}) {
  const words = say.keep;
  const { sheet, chosen, stored, waiting } = kept;
  const state =
    stored !== null
      ? sheet === null
        ? words.state.only
        : words.state.stored
      : waiting !== null
        ? words.state.waiting
        : words.state.here;
  const changed = kept.changed.map((what) => words.changedWhat[what as keyof typeof words.changedWhat] ?? what);
  const takeUp = (): void => {
    if (chosen !== null) changeWithUndo(words.takenUp, (it) => ({ ...it, ...chosen }));
  };
  return (
    <li>
      <h4>
        {name?.title} <span className={textStyles.hint}>{words.on(name?.when ?? '', name?.choice ?? '')}</span>
      </h4>
      <p className={textStyles.hint} role="status">
        {state} {changed.length > 0 && words.changed(changed.join(', '))}
      </p>
      <div className={buttonStyles.row}>
        {chosen !== null && (
          <button type="button" className={buttonStyles.quiet} onClick={takeUp}>
            {words.takeUp}
          </button>
        )}
        <button type="button" className={buttonStyles.quiet} onClick={() => remove(kept)}>
          {words.remove}
        </button>
      </div>
      <Files kept={kept} sheet={sheet} tape={tape} />
    </li>
  );
}

/** The exports of a kept sheet; a sheet that only the server has is fetched when this opens. */
function Files({
  kept,
  sheet,
  tape,
}: {
  readonly kept: KeptSheet;
  readonly sheet: TargetSheet | null;
  readonly tape: Tape;
}) {
  const [missing, setMissing] = useState(false);
  const open = (): void => {
    void fetchInto(kept).then((found) => setMissing(!found));
  };
  return (
    <details onToggle={(event) => event.currentTarget.open && sheet === null && open()}>
      <summary>{say.keep.textLabel}</summary>
      {sheet !== null ? <ExportButtons makeSheet={() => sheet} unit={tape} /> : missing && <p>{say.keep.missing}</p>}
    </details>
  );
}

/** Fetches a sheet that only the server has. False where that fails. */
export async function fetchInto(kept: KeptSheet): Promise<boolean> {
  if (kept.sheet !== null || kept.stored === null) return kept.sheet !== null;
  try {
    const { getSheet } = await import('../api/sheet-repository.ts');
    const sheet = await getSheet(kept.stored);
    if (sheet === null) return false;
    updateKeptSheets((it) => ({
      ...it,
      sheets: it.sheets.map((one) => (one.key === kept.key ? { ...one, sheet } : one)),
    }));
    return true;
  } catch {
    return false;
  }
}

/** Its button disappears with it, so the title of the list takes the focus first. */
function remove(kept: KeptSheet): void {
  document.getElementById(KEPT_TITLE)?.focus({ preventScroll: true });
  updateKeptSheets((all) => ({
    sheets: all.sheets.filter(({ key }) => key !== kept.key),
    removed: kept.stored === null ? all.removed : [...all.removed, kept.stored],
  }));
  // A restored sheet is new to the API: the stored one was deleted.
  offerUndo(say.keep.removed(titleOf(kept)), () =>
    updateKeptSheets((all) => ({ ...all, sheets: [{ ...kept, stored: null, changed: [] }, ...all.sheets] })),
  );
}
