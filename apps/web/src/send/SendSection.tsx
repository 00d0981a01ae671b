import { memo, useState } from 'react';
import { Select } from '../field/Select.tsx';
import { say } from '../messages.ts';
import { readDraft, writeDraft } from './draft.ts';
import { HandOffs } from './HandOffs.tsx';
import { HandOver } from './HandOver.tsx';
import { PlannerCard } from './PlannerCard.tsx';
import { PlannerForm } from './PlannerForm.tsx';
import { fromPlanner } from './planner-notes.ts';
import { addPlanner, changePlanner, type NewSecret, type Planner } from '../api/planner-repository.ts';
import { usePlanners } from './use-planners.ts';
import { usePage } from '../state/page-store.ts';
import fieldRow from '../ui/field-row.module.css';

/** The mode: a planner is shown, added or edited. */
type Doing = 'looking' | 'adding' | 'changing';

/** Sets planners up and sends kept sheets to them. */
export const SendSection = memo(function SendSection() {
  const words = say.send;
  const { planners, lost, put, drop } = usePlanners();
  const { sheets } = usePage((state) => state.keptSheets);
  const [chosen, setChosen] = useState('');
  const [doing, setDoing] = useState<Doing>('looking');
  const [secret, setSecret] = useState<string | null>(null);
  const [sent, setSent] = useState(0);
  if (planners === null) return <p role="status">{lost ? words.lost : words.looking}</p>;
  const planner = planners.find(({ id }) => id === chosen) ?? planners[0] ?? null;
  const look = (id: string): void => {
    setChosen(id);
    setSecret(null);
    setDoing('looking');
  };
  const saved = ({ secret: made, ...kept }: NewSecret): void => {
    put(kept);
    look(kept.id);
    setSecret(made);
  };
  if (doing === 'changing' && planner !== null)
    return (
      <PlannerForm
        key={planner.id}
        begin={fromPlanner(planner)}
        keep={words.form.change}
        onNotes={() => undefined}
        onSave={async (dto) => saved(await changePlanner(planner, dto))}
        onLeave={() => setDoing('looking')}
      />
    );
  if (doing === 'adding')
    return (
      <PlannerForm
        begin={readDraft()}
        keep={words.form.add}
        onNotes={writeDraft}
        onSave={async (dto) => {
          saved(await addPlanner(dto));
          writeDraft(null);
        }}
        onLeave={() => setDoing('looking')}
      />
    );
  return (
    <>
      {planner === null && <p>{words.lead}</p>}
      <div className={fieldRow.row}>
        {planner !== null && (
          <Select
            label={words.to}
            options={planners.map(({ id, title }) => ({ value: id, label: title }))}
            value={planner.id}
            onValue={look}
          />
        )}
        <button type="button" onClick={() => setDoing('adding')}>
          {words.setUp}
        </button>
      </div>
      {planner !== null && (
        <>
          <PlannerCard
            key={planner.id}
            planner={planner}
            secret={secret}
            onPlanner={(changed: Planner) => put(changed)}
            onSecret={setSecret}
            onEdit={() => setDoing('changing')}
            onGone={() => {
              drop(planner.id);
              look('');
            }}
          />
          <HandOver planner={planner} sheets={sheets} onSent={() => setSent((count) => count + 1)} />
          <HandOffs planner={planner} sent={sent} />
        </>
      )}
    </>
  );
});
