import { meaning } from '#advice-text';
import { RULES } from '#fit';
import { NumberField } from '../http/fields.ts';

/** A maker's own numbers in place of rules, by the names of the rule table; each within the limits that the table gives. */
export class RulesDto {
  [name: string]: number | null;
}

for (const { name, value, min, max, unit } of RULES) {
  const description = `${meaning('rule', name)}${unit === 'mm' ? ' In mm.' : ''}`;
  NumberField({ optional: true, min, max, default: value, description })(RulesDto.prototype, name);
}
