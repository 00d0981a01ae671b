/** How a value was come by, most trusted first; sets its standard uncertainty where none is given. */
export const HOWS = ['trained', 'home', 'estimated', 'table'] as const;
export type How = (typeof HOWS)[number];

/** Whether a tape was laid, whoever held it; what else is known was guessed or read. */
export const isMeasured = (how: How): boolean => how === 'trained' || how === 'home';
