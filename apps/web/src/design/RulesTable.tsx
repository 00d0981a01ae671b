import { useState } from 'react';
import { meaning } from '#advice-text';
import { RULES, type Rule } from '#fit';
import { TextField } from '../field/TextField.tsx';
import { say } from '../messages.ts';
import { showNumber } from '../reading/numbers.ts';
import { writeDesign } from './write-design.ts';
import textStyles from '../ui/text.module.css';
import styles from './RulesTable.module.css';

/** Every rule behind the numbers, with its source and a field to override it. */
export function RulesTable({ rules }: { readonly rules: Readonly<Record<string, number>> }) {
  return (
    <ul className={styles.rules}>
      {RULES.map((rule) => (
        <li key={rule.name}>
          <OneRule rule={rule} overruled={rules[rule.name]} />
        </li>
      ))}
    </ul>
  );
}

function OneRule({ rule, overruled }: { readonly rule: Rule; readonly overruled: number | undefined }) {
  const words = say.design;
  const { name, value, unit, source, min, max } = rule;
  const [text, setText] = useState(overruled === undefined ? '' : String(overruled));
  const show = (it: number): string => (unit === 'mm' ? `${showNumber(it, 1)} mm` : showNumber(it, 3));
  const range = words.ruleRange(show(min), show(max));
  const wrong = text.trim() !== '' && ruleNumber(text, rule) === null;
  const write = (next: string): void => {
    setText(next);
    writeDesign((it) => {
      const { [name]: _, ...rest } = it.rules;
      const number = ruleNumber(next, rule);
      return { ...it, rules: number === null ? rest : { ...rest, [name]: number } };
    });
  };
  return (
    <TextField
      label={meaning('rule', name)}
      value={text}
      unit={unit === 'mm' ? 'mm' : ''}
      onValue={write}
      wrong={wrong}
      below={wrong ? <span className={textStyles.wrong}>{range}</span> : words.rule(show(value), source)}
    />
  );
}

/** The number in a text, if it is within the limits of the rule; null otherwise. */
function ruleNumber(text: string, { min, max }: Rule): number | null {
  const tidy = text.trim().replace(',', '.').replace('−', '-');
  const number = tidy === '' ? NaN : Number(tidy);
  return number >= min && number <= max ? number : null;
}
