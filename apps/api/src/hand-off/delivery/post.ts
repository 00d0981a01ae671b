import http, { type ClientRequest, type IncomingMessage } from 'node:http';
import https from 'node:https';
import type { AddressPolicy } from '../addresses/address-policy.ts';
import { AddressClosed, checkedLookup } from '../addresses/checked-lookup.ts';
import { literalAddress } from '../addresses/planner-address.ts';
import { failureOf, TimedOut, type Failure } from './failure.ts';
import { readAnswer } from './read-answer.ts';

/** What came of one POST: the planner's answer, or why there was none. */
export type PostResult =
  | { readonly status: number; readonly retryAfter: string | null; readonly answer: string }
  | { readonly failure: Failure };

/** From opening the connection to the end of the answer (Standard Webhooks 1.0.0: 15 to 30 s). */
const TIMEOUT_MS = 20_000;
/** How many connections to one planner stay open between hand-offs. */
const KEPT_OPEN = 8;

/**
 * Sends bodies to planners: no redirect is followed, and a connection is only opened to an address that the policy
 * allows, checked as it is opened.
 */
export class PlannerPost {
  private readonly agents = {
    'http:': new http.Agent({ keepAlive: true, maxFreeSockets: KEPT_OPEN }),
    'https:': new https.Agent({ keepAlive: true, maxFreeSockets: KEPT_OPEN }),
  };

  private readonly underWay = new Set<ClientRequest>();
  private closed = false;

  constructor(
    private readonly policy: AddressPolicy,
    private readonly timeoutMs = TIMEOUT_MS,
  ) {}

  async send(address: string, headers: Readonly<Record<string, string>>, body: string): Promise<PostResult> {
    try {
      return await this.sendOnce(address, headers, Buffer.from(body));
    } catch (error) {
      return { failure: failureOf(error) };
    }
  }

  /** Breaks off what is under way and closes the connections that are kept open. */
  close(): void {
    this.closed = true;
    for (const request of this.underWay) request.destroy();
    for (const agent of Object.values(this.agents)) agent.destroy();
  }

  /** A connection kept open may be closed by the planner just as it is used again: then a new one is opened. */
  private async sendOnce(
    address: string,
    headers: Readonly<Record<string, string>>,
    body: Buffer,
  ): Promise<PostResult> {
    const url = new URL(address);
    const sized = { ...headers, 'content-length': String(body.length) };
    const request = this.request(url, sized, this.agents[url.protocol === 'https:' ? 'https:' : 'http:']);
    try {
      return await this.exchange(request, body);
    } catch (error) {
      const closedMeanwhile = request.reusedSocket && failureOf(error) === 'broken-off';
      if (!closedMeanwhile || this.closed) throw error;
      return await this.exchange(this.request(url, sized, false), body);
    }
  }

  private exchange(request: ClientRequest, body: Buffer): Promise<PostResult> {
    return this.within(request, async () => {
      const response = await this.respond(request, body);
      return {
        status: response.statusCode ?? 0,
        retryAfter: response.headers['retry-after'] ?? null,
        answer: await readAnswer(response),
      };
    });
  }

  /** Breaks a request off when its time is up, wherever it stands. */
  private async within<T>(request: ClientRequest, work: () => Promise<T>): Promise<T> {
    const timer = setTimeout(() => request.destroy(new TimedOut()), this.timeoutMs);
    this.underWay.add(request);
    try {
      return await work();
    } finally {
      clearTimeout(timer);
      this.underWay.delete(request);
    }
  }

  private respond(request: ClientRequest, body: Buffer): Promise<IncomingMessage> {
    return new Promise((resolve, reject) => {
      request.once('response', resolve).on('error', reject).end(body);
    });
  }

  private request(url: URL, headers: Readonly<Record<string, string>>, agent: http.Agent | false): ClientRequest {
    const secure = url.protocol === 'https:';
    const mayConnect = (address: string): boolean =>
      secure ? this.policy.allows(address) : this.policy.allowsUnencrypted(address);
    const literal = literalAddress(url);
    if (literal !== null && !mayConnect(literal)) throw new AddressClosed(`${literal} is not open`);
    return (secure ? https : http).request(url, {
      method: 'POST',
      agent,
      lookup: checkedLookup(mayConnect),
      headers: { 'user-agent': 'easewright', ...headers },
    });
  }
}
