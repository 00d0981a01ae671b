/** A reason not to start, in one line: what is wrong and what would be right. `main.ts` prints it and exits. */
export class StartError extends Error {}
