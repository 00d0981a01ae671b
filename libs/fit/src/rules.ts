import rulesJson from './rules.json' with { type: 'json' };

/** One number of the model that a maker can see and override. `source` names the publication, or says practice, from memory or assumed. */
export interface Rule {
  readonly name: string;
  readonly value: number;
  readonly unit: 'mm' | '1' | 'mm/mm';
  /** What it does, in one line. */
  readonly what: string;
  readonly source: string;
  /** Sensible limits for an override. */
  readonly min: number;
  readonly max: number;
}

export type RuleName = keyof typeof rulesJson;
export type Rules = Readonly<Record<RuleName, number>>;
