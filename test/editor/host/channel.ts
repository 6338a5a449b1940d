// The wire between a test inside the editor and the user's side: one JSON request an action, over loopback HTTP.
import { createServer, type IncomingMessage } from 'node:http';
import type { AddressInfo } from 'node:net';
import type { Action, Answer } from './protocol.ts';

export interface Channel {
  readonly address: string;
  close(): void;
}

/** Listens for actions and answers each with what `perform` makes of it; a failure travels as its message. */
export async function openChannel(perform: (action: Action) => Promise<unknown>): Promise<Channel> {
  const server = createServer(async (request, response) => {
    // The browser host's worker asks from another origin.
    response.setHeader('Access-Control-Allow-Origin', '*');
    response.setHeader('Access-Control-Allow-Headers', '*');
    if (request.method !== 'POST') return void response.end();
    response.setHeader('Content-Type', 'application/json');
    response.end(JSON.stringify(await answer(request)));
  });
  const answer = async (request: IncomingMessage): Promise<Answer> => {
    try {
      return { value: await perform(JSON.parse(await body(request)) as Action) };
    } catch (error) {
      return { error: error instanceof Error ? error.message : String(error) };
    }
  };
  await new Promise<void>((resolve) => server.listen(0, '127.0.0.1', resolve));
  return { address: `http://127.0.0.1:${(server.address() as AddressInfo).port}`, close: () => void server.close() };
}

async function body(request: IncomingMessage): Promise<string> {
  let text = '';
  for await (const part of request.setEncoding('utf8')) text += part;
  return text;
}
