import { memo } from 'react';
import type { TargetSheet } from '#target-sheet';
import { say } from '../messages.ts';
import type { Tape } from '../notebook/typed.ts';
import { Checks } from './Checks.tsx';
import { Numbers } from './Numbers.tsx';
import { PaperHead } from './PaperHead.tsx';
import { Pieces } from './Pieces.tsx';
import { Remarks } from './Remarks.tsx';
import textStyles from '../ui/text.module.css';

/** The full sheet: first the checks, then the pieces, then every number. */
export const Sheet = memo(function Sheet({
  sheet,
  tape,
  bodyName,
  yarnKnown,
}: {
  readonly sheet: TargetSheet;
  readonly tape: Tape;
  readonly bodyName: string;
  readonly yarnKnown: boolean;
}) {
  return (
    <>
      <PaperHead sheet={sheet} bodyName={bodyName} tape={tape} />
      {!yarnKnown && <p className={textStyles.hint}>{say.sheet.noYarn}</p>}
      <Checks checks={sheet.checks} tape={tape} />
      <Remarks sheet={sheet} />
      <Pieces sheet={sheet} tape={tape} />
      <Numbers sheet={sheet} tape={tape} />
    </>
  );
});
