import { useState } from 'react';
import { say } from '../messages.ts';
import { lazyModule } from '../ui/lazy-module.ts';
import { changeWithUndo } from '../state/undo.ts';
import buttonStyles from '../ui/buttons.module.css';

const useTable = lazyModule(() => import('./RulesTable.tsx'));

/** The rules behind the numbers: a long list, loaded when it is opened. */
export function AllRules({ rules }: { readonly rules: Readonly<Record<string, number>> }) {
  const [open, setOpen] = useState(false);
  const table = useTable(open);
  return (
    <details onToggle={(event) => setOpen(event.currentTarget.open)}>
      <summary>{say.design.allRules}</summary>
      <p>{say.design.rulesLead}</p>
      {open && table && <table.RulesTable rules={rules} />}
    </details>
  );
}

/** The overridden rules, each with a button to restore it. */
export function RulesChanged({ rules }: { readonly rules: Readonly<Record<string, number>> }) {
  const names = Object.keys(rules);
  if (names.length === 0) return null;
  // Its button disappears with it, so the title takes the focus first.
  const without = (name: string): void => {
    document.getElementById('design-title')?.focus({ preventScroll: true });
    changeWithUndo(say.shelf.removed(name), (it) => {
      const { [name]: _, ...rest } = it.design.rules;
      return { ...it, design: { ...it.design, rules: rest } };
    });
  };
  return (
    <div>
      <h3>{say.design.rules}</h3>
      <ul>
        {names.map((name) => (
          <li key={name}>
            {name.replaceAll('-', ' ')}: {rules[name]}{' '}
            <button type="button" className={buttonStyles.quiet} onClick={() => without(name)}>
              {say.design.ruleBack}
            </button>
          </li>
        ))}
      </ul>
    </div>
  );
}
