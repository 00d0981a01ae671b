/** A reason not to start, said in one line: what is wrong and what would be right. `main.ts` prints it and exits. */
export class StartError extends Error {}
