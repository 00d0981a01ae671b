import { text } from '#advice-text';
import { memo, useMemo } from 'react';
import { say } from '../messages.ts';
import type { YarnNotes } from '../notebook/notebook.ts';
import type { Tape } from '../notebook/typed.ts';
import { showSmall } from '../reading/numbers.ts';
import { toFabric } from '../compute/to-fabric.ts';
import { RoomDrawing } from './RoomDrawing.tsx';
import styles from './YarnRoom.module.css';

/** The drawing of the room that the thickness takes, and the thickness that the computation uses. */
export const YarnRoom = memo(function YarnRoom({
  notes,
  tape,
  flatMm,
  bodyMm,
}: {
  readonly notes: YarnNotes;
  readonly tape: Tape;
  /** Twice the flat width to draw the room of. */
  readonly flatMm: number;
  readonly bodyMm: number | null;
}) {
  const words = say.yarn;
  const { fabric, input, wrong, lacksFibre } = useMemo(() => toFabric(notes), [notes]);
  return (
    <div>
      <RoomDrawing
        flatMm={flatMm}
        bodyMm={bodyMm}
        thicknessMm={input.thicknessMm ?? fabric?.thicknessMm ?? 3}
        tape={tape}
      />
      <p className={styles.thickness} role="status">
        {fabric && words.taken(showSmall(fabric.thicknessMm, tape), text('source', fabric.source, { tape }))}
        {!fabric && (wrong ? words.cannotBe(words.wrong[wrong]) : lacksFibre ? words.lacksFibre : words.unknown)}
      </p>
    </div>
  );
});
