import { Headline } from '../sheet/Headline.tsx';
import { say } from '../messages.ts';
import { isEmpty } from '../notebook/is-empty.ts';
import { useComputation } from './use-computation.ts';
import { KeepAndMadeLeaves } from './KeepAndMadeLeaves.tsx';
import { LeafNavigation } from './LeafNavigation.tsx';
import { ResultPane } from './ResultPane.tsx';
import { PageHeader } from './PageHeader.tsx';
import { UndoNotice } from './UndoNotice.tsx';
import { InputLeaves } from './InputLeaves.tsx';
import { usePage } from '../state/page-store.ts';
import styles from './Page.module.css';

/** The whole page: the notebook with one leaf open, and the sheet that is computed from it at every change. */
export function Page() {
  const notebook = usePage((state) => state.notebook);
  const open = usePage((state) => state.openLeaf);
  const { tape } = notebook;
  const empty = isEmpty(notebook);
  const { computation, openQuestions, model } = useComputation(notebook, !empty);
  return (
    <>
      <a className={styles.skip} href="#sheet">
        {say.skip}
      </a>
      <PageHeader tape={tape} />
      <LeafNavigation open={open} />
      <main className={styles.leaves} data-leaf={open}>
        <InputLeaves
          open={open}
          notebook={notebook}
          empty={empty}
          computation={computation}
          openQuestions={openQuestions}
        />
        <ResultPane open={open} notebook={notebook} computation={computation} />
        <KeepAndMadeLeaves open={open} notebook={notebook} computation={computation} model={model} />
      </main>
      <aside className={styles.strip} aria-label={say.sheet.inShort}>
        <Headline sheet={computation?.sheet ?? null} tape={tape} />
      </aside>
      <UndoNotice />
    </>
  );
}
