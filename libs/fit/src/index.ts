export * from './design.ts';
export * from './advice.ts';
export type { FitRequest } from './fit-request.ts';
export { advise } from './advise.ts';
export { sensitivities } from './sensitivity.ts';
export type { Tape } from './length-words.ts';
export { type Rule, type RuleName, type Rules, RULES, RULES_VERSION, rulesWith } from './rules.ts';
export { BODY_MEASURES } from './inputs.ts';
export { MADE_MEASURES } from './made.ts';
