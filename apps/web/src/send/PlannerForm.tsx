import type { PlannerFormat } from '#hand-off';
import { useState } from 'react';
import { Choice } from '../field/Choice.tsx';
import { TextField } from '../field/TextField.tsx';
import { say } from '../messages.ts';
import { NameRows } from './NameRows.tsx';
import { toPlannerDto, type PlannerNotes, type Unit } from './planner-notes.ts';
import { plainNumber } from '../reading/read.ts';
import type { PlannerDto } from '../api/planner-repository.ts';
import { ErrorList } from './ErrorList.tsx';
import { useRequest } from './use-request.ts';
import buttonStyles from '../ui/buttons.module.css';
import fieldGrid from '../ui/field-grid.module.css';
import styles from './PlannerForm.module.css';

const UNITS: readonly Unit[] = ['cm', 'mm', 'in'];

/** The form of a planner: its address and what it takes. `onNotes` is called at every change. */
export function PlannerForm({
  begin,
  keep,
  onNotes,
  onSave,
  onLeave,
}: {
  readonly begin: PlannerNotes;
  readonly keep: string;
  readonly onNotes: (notes: PlannerNotes) => void;
  readonly onSave: (planner: PlannerDto) => Promise<void>;
  readonly onLeave: () => void;
}) {
  const words = say.send.form;
  const formats = Object.keys(words.formats) as readonly PlannerFormat[];
  const [notes, setNotes] = useState(begin);
  const { busy, errors, run } = useRequest();
  const write = (how: Partial<PlannerNotes>): void => {
    const next = { ...notes, ...how };
    setNotes(next);
    onNotes(next);
  };
  const stepWrong = notes.step.trim() !== '' && plainNumber(notes.step) === null;
  return (
    <form
      className={styles.form}
      onSubmit={(event) => {
        event.preventDefault();
        run(() => onSave(toPlannerDto(notes)));
      }}
    >
      <div className={`${fieldGrid.grid} ${styles.wide}`}>
        <TextField label={words.title} value={notes.title} onValue={(title) => write({ title })} />
        <TextField
          label={words.address}
          value={notes.address}
          onValue={(address) => write({ address })}
          below={words.addressHint}
        />
      </div>
      <Choice
        legend={words.unit}
        options={UNITS.map((value) => ({ value, label: words.units[value] }))}
        value={notes.unit}
        onValue={(unit) => write({ unit })}
      />
      <Choice
        legend={words.format}
        options={formats.map((value) => ({ value, label: words.formats[value], hint: words.formatHints[value] }))}
        value={notes.format}
        onValue={(format) => write({ format })}
      />
      {notes.format !== 'sheet' && (
        <>
          <TextField
            label={words.step}
            value={notes.step}
            onValue={(step) => write({ step })}
            unit={notes.unit}
            wrong={stepWrong}
            below={stepWrong ? words.stepWrong : words.stepHint}
          />
          <NameRows names={notes.names} csv={notes.format === 'csv'} onNames={(names) => write({ names })} />
        </>
      )}
      <ErrorList lines={errors} />
      <div className={buttonStyles.row}>
        <button type="submit" className={buttonStyles.primary} disabled={busy}>
          {keep}
        </button>
        <button type="button" onClick={onLeave}>
          {words.leave}
        </button>
      </div>
    </form>
  );
}
