import { memo } from 'react';
import type { BodyModel } from '#body';
import type { TargetSheet } from '#target-sheet';
import { say } from '../messages.ts';
import { newKey } from '../notebook/new-key.ts';
import type { Tape } from '../notebook/typed.ts';
import { currentNotebook } from '../state/notebook.ts';
import { makeSheet } from '../compute/compute.ts';
import { sheetFingerprint } from '../records/sheet-fingerprint.ts';
import { KEPT_TITLE, KeptList } from './KeptList.tsx';
import { SideBySide } from './SideBySide.tsx';
import { ExportButtons } from './ExportButtons.tsx';
import { updateKeptSheets } from '../state/kept-sheets.ts';
import { usePage } from '../state/page-store.ts';
import buttonStyles from '../ui/buttons.module.css';
import textStyles from '../ui/text.module.css';

/** Keeps, prints and exports the sheet, and compares two of them. */
export const KeepSection = memo(function KeepSection({
  sheet,
  model,
  tape,
}: {
  readonly sheet: TargetSheet | null;
  readonly model: BodyModel | null;
  readonly tape: Tape;
}) {
  const words = say.keep;
  const { sheets } = usePage((state) => state.keptSheets);
  const now = (): TargetSheet => makeSheet(currentNotebook(), newKey(), model);
  const keep = (): void => {
    const kept = now();
    const { design, made } = currentNotebook();
    updateKeptSheets((it) => ({
      ...it,
      sheets: [
        {
          key: newKey(),
          title: kept.title,
          createdAt: kept.createdAt,
          sheet: kept,
          chosen: { design, made },
          stored: null,
          waiting: sheetFingerprint(currentNotebook()),
          changed: [],
        },
        ...it.sheets,
      ],
    }));
  };
  return (
    <>
      {sheet === null ? (
        <p>{words.nothing}</p>
      ) : (
        <>
          <div className={buttonStyles.row}>
            <button type="button" className={buttonStyles.primary} onClick={keep}>
              {words.keep}
            </button>
            <button type="button" onClick={() => window.print()}>
              {words.print}
            </button>
            <span className={textStyles.hint}>{words.printHint}</span>
          </div>
          <ExportButtons makeSheet={now} unit={tape} />
        </>
      )}
      <h3 id={KEPT_TITLE} tabIndex={-1}>
        {words.kept}
      </h3>
      <KeptList sheets={sheets} tape={tape} />
      <SideBySide sheets={sheets} now={sheet} tape={tape} />
    </>
  );
});
