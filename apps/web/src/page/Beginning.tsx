import { say } from '../messages.ts';
import { takeAway } from '../notebook/use-notebook.ts';

/** For one who came to an empty page: offers an example, beside what she may have written meanwhile. */
export function Beginning() {
  const load = async (): Promise<void> => {
    const { withDemo } = await import('../notebook/demo.ts');
    takeAway(say.demo.loaded, withDemo);
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
