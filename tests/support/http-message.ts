/** One message of HTTP as text: a first line, headers, an empty line, and a body where there is one. */
export interface HttpMessage {
  readonly first: string;
  readonly headers: Readonly<Record<string, string>>;
  readonly body: string | null;
}

export function readMessage(text: string): HttpMessage {
  const [head = '', body] = text.trim().split(/\n\n(.*)/s);
  const [first = '', ...lines] = head.split('\n');
  return { first, headers: Object.fromEntries(lines.map((line) => line.split(/: (.*)/))), body: body ?? null };
}

export function writeMessage({ first, headers, body }: HttpMessage): string {
  const lines = Object.entries(headers).map(([name, value]) => `${name}: ${value}`);
  return `${[first, ...lines].join('\n')}\n${body === null ? '' : `\n${body}\n`}`;
}
