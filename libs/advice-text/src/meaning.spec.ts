import { expect, it } from 'vitest';
import { RULES } from '#fit';
import { meaning } from './meaning.ts';

it.each(RULES.map(({ name }) => name))('says in one line what the rule %s does', (name) => {
  expect(meaning('rule', name)).toMatch(/\S.*\.$/);
});
