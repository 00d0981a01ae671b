import { memo } from 'react';
import type { TargetSheet } from '#target-sheet';
import { say } from '../messages.ts';
import type { Tape } from '../notebook/typed.ts';
import { showSigned, showSmall } from '../reading/numbers.ts';
import styles from './PaperHead.module.css';

/** The head of a printed sheet. */
export const PaperHead = memo(function PaperHead({
  sheet,
  bodyName,
  tape,
}: {
  readonly sheet: TargetSheet;
  readonly bodyName: string;
  readonly tape: Tape;
}) {
  const { silhouette, construction, neckline, opening, length, ease } = sheet.design;
  const words = say.design;
  const chosen = [
    words.silhouette[silhouette],
    say.construction[construction],
    `${words.neckline.legend}: ${words.neckline[neckline]}`,
    ...(opening.at === 'none' ? [] : [`${words.opening.legend}: ${words.opening[opening.at]}`]),
    `${words.length.legend}: ${words.length[length]}`,
    ...(ease.tableTerms === null ? [] : [`${words.ease.legend}: ${showSigned(ease.tableTerms, tape)}`]),
    `${say.yarn.room.thickness}: ${showSmall(sheet.fabric.thickness, tape)}`,
    ...(bodyName === '' ? [] : [say.sheet.forWhom(bodyName)]),
  ];
  return (
    <div className={styles.head}>
      <h1>{sheet.title || say.sheet.title}</h1>
      <p>{chosen.join(' · ')}</p>
      <p>
        {new Date().toLocaleDateString(navigator.language)} · {say.name}
      </p>
    </div>
  );
});
