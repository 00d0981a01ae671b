/** A reason not to make or restore a backup, in one line: what is wrong and what would be right. */
export class BackupError extends Error {}
