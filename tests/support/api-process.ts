import { execFileSync, spawn, type ChildProcess } from 'node:child_process';
import { existsSync, mkdirSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { inject } from 'vitest';
import type { Environment } from '../../apps/api/src/settings/settings.ts';
import { until } from './until.ts';

/** Builds what `npm start` runs: the first test file of a run that needs it does, the others wait for that. */
export async function buildApi(): Promise<void> {
  const folder = inject('runFolder');
  const built = join(folder, 'built');
  try {
    mkdirSync(join(folder, 'building'));
  } catch {
    await until(() => existsSync(built), 300_000);
    return;
  }
  execFileSync(process.execPath, ['node_modules/typescript/bin/tsc', '-p', 'tsconfig.build.json'], {
    stdio: 'inherit',
  });
  writeFileSync(built, '');
}

/** The API as a process of its own, as `npm start` runs it. */
export class ApiProcess {
  private constructor(
    private readonly child: ChildProcess,
    readonly url: string,
    private readonly written: { errors: string },
  ) {}

  /** What it has written on the standard error. */
  get errors(): string {
    return this.written.errors;
  }

  /** Starts it on a free port; ready when it says where it is. */
  static async start(env: Environment): Promise<ApiProcess> {
    const child = spawn(process.execPath, ['dist/apps/api/src/main.js'], {
      env: { PATH: process.env['PATH'], PORT: '0', PAGE_DIR: 'there-is-none', ...env },
      stdio: ['ignore', 'pipe', 'pipe'],
    });
    let output = '';
    const written = { errors: '' };
    const url = await new Promise<string>((resolve, reject) => {
      const listen = (chunk: Buffer): void => {
        output += chunk.toString();
        const found = /Easewright is at (\S+)/.exec(output)?.[1];
        if (found !== undefined) resolve(found);
      };
      child.stdout.on('data', listen);
      child.stderr.on('data', listen).on('data', (chunk: Buffer) => void (written.errors += chunk.toString()));
      child.once('exit', (code) => reject(new Error(`The API ended (${code}) and printed: ${output}`)));
    });
    return new ApiProcess(child, url, written);
  }

  /** Ends it as a power cut does. */
  async killNine(): Promise<void> {
    await this.end('SIGKILL');
  }

  async stop(): Promise<void> {
    await this.end('SIGTERM');
  }

  /** Sends it a signal; gives its exit code when it has ended. */
  async signal(signal: NodeJS.Signals): Promise<number | null> {
    const ended = new Promise<number | null>((done) => this.child.once('close', done));
    this.child.kill(signal);
    return ended;
  }

  private async end(signal: NodeJS.Signals): Promise<void> {
    if (this.child.exitCode !== null || this.child.signalCode !== null) return;
    const gone = new Promise((done) => this.child.once('exit', done));
    this.child.kill(signal);
    await gone;
  }
}
