import http, { type IncomingHttpHeaders, type IncomingMessage, type ServerResponse } from 'node:http';
import type { AddressInfo } from 'node:net';
import { Webhook } from 'standardwebhooks';

/** One request as a planner got it. */
interface Received {
  readonly path: string;
  readonly headers: IncomingHttpHeaders;
  readonly body: string;
}

type Answer = (received: Received, response: ServerResponse) => void;

/** A planner nobody here wrote, as far as the product can tell: a bare HTTP server that keeps what it is sent. */
export class RealPlanner {
  readonly received: Received[] = [];
  private answer: Answer = (_received, response) => void response.end('taken');
  private readonly server = http.createServer((request, response) => void this.take(request, response));

  static async start(port = 0): Promise<RealPlanner> {
    const planner = new RealPlanner();
    await new Promise<void>((done) => planner.server.listen(port, '127.0.0.1', done));
    return planner;
  }

  get address(): string {
    return `http://127.0.0.1:${(this.server.address() as AddressInfo).port}/take`;
  }

  /** From now on it answers so. */
  answers(answer: Answer): void {
    this.answer = answer;
  }

  /** The next requests are answered with these statuses, one each; later ones with 200. */
  answersWith(...statuses: { readonly status: number; readonly headers?: Record<string, string> }[]): void {
    this.answers((_received, response) => {
      const { status, headers } = statuses.shift() ?? { status: 200 };
      response.writeHead(status, headers).end(`answered ${status}`);
    });
  }

  /** What came with one webhook-id. */
  receivedAs(id: string): Received[] {
    return this.received.filter(({ headers }) => headers['webhook-id'] === id);
  }

  async stop(): Promise<void> {
    this.server.closeAllConnections();
    await new Promise((done) => this.server.close(done));
  }

  private async take(request: IncomingMessage, response: ServerResponse): Promise<void> {
    const body = Buffer.concat(await request.toArray()).toString();
    const received = { path: request.url ?? '', headers: request.headers, body };
    this.received.push(received);
    this.answer(received, response);
  }
}

/** The body, where the signature is right; by the verifier of the Standard Webhooks project. @throws where it is not */
export function verified({ headers, body }: Received, secret: string): unknown {
  return new Webhook(secret).verify(body, headers as Record<string, string>);
}
