import type { LoggerService } from '@nestjs/common';
import { pino, type Logger } from 'pino';
import { errorPlace, framesOf } from './error-place.ts';
import { RepeatFolder } from './repeat-folder.ts';

export const LOG_LEVELS = ['fatal', 'error', 'warn', 'info', 'debug', 'trace', 'silent'] as const;
export type LogLevel = (typeof LOG_LEVELS)[number];

/** Of the same entry one in so long is written, with how many were not. */
const WINDOW_MS = 10_000;

/**
 * What the service writes about itself: a JSON object a line, on the standard error. Errors are named by their kind and their
 * place in the code, never by their message, which may quote what a maker entered.
 */
export class StructuredLogger implements LoggerService {
  readonly pino: Logger;
  private readonly folder = new RepeatFolder(WINDOW_MS, () => performance.now());

  constructor(level: LogLevel) {
    const options = {
      level,
      base: null,
      timestamp: pino.stdTimeFunctions.isoTime,
      formatters: { level: (label: string) => ({ level: label }) },
    };
    this.pino = pino(options, { write: (line: string) => void process.stderr.write(line) });
  }

  fatal(message: unknown, ...more: unknown[]): void {
    this.write('fatal', message, more);
  }
  error(message: unknown, ...more: unknown[]): void {
    this.write('error', message, more);
  }
  warn(message: unknown, ...more: unknown[]): void {
    this.write('warn', message, more);
  }
  /** Nest tells with this of every route it sets up. */
  log(message: unknown, ...more: unknown[]): void {
    this.write('debug', message, more);
  }
  debug(message: unknown, ...more: unknown[]): void {
    this.write('debug', message, more);
  }
  verbose(message: unknown, ...more: unknown[]): void {
    this.write('trace', message, more);
  }

  /** Nest gives the name of what logs as the last of `more`, and before it, with some errors, a stack. */
  private write(level: Exclude<LogLevel, 'silent'>, message: unknown, more: readonly unknown[]): void {
    if (!this.pino.isLevelEnabled(level)) return;
    const context = typeof more.at(-1) === 'string' ? (more.at(-1) as string) : undefined;
    const stack = more.slice(0, -1).find((each) => typeof each === 'string' && framesOf(each).length > 0);
    const { msg, ...fields } = entryOf(message);
    const text = stack === undefined ? msg : [msg, ...framesOf(stack as string)].join('\n');
    const folded = this.folder.admit(`${level} ${context} ${text}`);
    if (folded === null) return;
    this.pino[level]({ context, ...fields, ...(folded > 0 && { repeated: folded }) }, text);
  }
}

function entryOf(message: unknown): { msg: string } & Record<string, unknown> {
  if (typeof message === 'string') return { msg: message };
  if (message instanceof Error || typeof message !== 'object' || message === null) return { msg: errorPlace(message) };
  return { msg: '', ...message };
}
