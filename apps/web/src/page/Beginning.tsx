import { say } from '../messages.ts';
import type { Notebook } from '../notebook/notebook.ts';
import { takeAway } from '../notebook/use-notebook.ts';

/** Nothing is written: offers an example. */
export function Beginning({ notebook }: { readonly notebook: Notebook }) {
  const load = async (): Promise<void> => {
    const { withDemo, withoutDemo } = await import('../notebook/demo.ts');
    takeAway(say.demo.loaded, withDemo, (now) => withoutDemo(now, notebook));
  };
  return (
    <div className="beginning">
      <p>{say.demo.text}</p>
      <button type="button" onClick={() => void load()}>
        {say.demo.load}
      </button>
    </div>
  );
}
