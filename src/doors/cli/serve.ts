import type { IncomingMessage, Server } from 'node:http';
import sirv from 'sirv';
import type { Handed } from '../../command/machine/index.ts';

/**
 * Serves a folder's files to this machine's browsers at the first free port from `port` on, and
 * opens what `say` answers to its address. Ends when the process is told to.
 */
export async function serve(
  folder: string,
  port: number,
  say: (address: string) => string,
  given?: Handed,
): Promise<void> {
  const server = serverOf(folder, given);
  const found = await listen(server, port);
  show(say(`http://127.0.0.1:${found}/`));
  await new Promise<void>((resolve) => {
    for (const signal of ['SIGINT', 'SIGTERM']) process.once(signal, () => resolve());
  });
  server.close();
  server.closeAllConnections();
}

/** A server of a folder, and of what is given; the last to whoever names this machine alone. */
export function serverOf(folder: string, given?: Handed): Server {
  const http = process.getBuiltinModule('node:http');
  const files = sirv(folder, { dev: false, etag: true });
  return http.createServer((request, response) => {
    if (given && request.url === `/${given.path}` && namesThisMachine(request)) {
      response.writeHead(200, {
        'content-type': 'text/plain; charset=utf-8',
        'cache-control': 'no-store',
        'x-content-type-options': 'nosniff',
      });
      response.end(given.text);
      return;
    }
    files(request, response, () => {
      response.writeHead(404).end();
    });
  });
}

// A page from elsewhere may have its own name lead here; then it asks by that name.
function namesThisMachine({ headers }: IncomingMessage): boolean {
  return /^(?:127\.0\.0\.1|localhost):\d+$/u.test(headers.host ?? '');
}

function listen(server: Server, port: number): Promise<number> {
  return new Promise((resolve, reject) => {
    server.once('error', (error: NodeJS.ErrnoException) => {
      if (error.code !== 'EADDRINUSE' || port === 0) reject(error);
      else resolve(listen(server, port + 1));
    });
    server.listen(port, '127.0.0.1', () => {
      const address = server.address();
      resolve(typeof address === 'object' && address ? address.port : port);
    });
  });
}

// Where there is no browser to be opened, the printed address is enough.
function show(address: string): void {
  const { platform, env } = process;
  if (platform === 'linux' && !env['DISPLAY'] && !env['WAYLAND_DISPLAY']) return;
  const command = { darwin: 'open', win32: 'explorer' }[platform as string] ?? 'xdg-open';
  const { spawn } = process.getBuiltinModule('node:child_process');
  const opener = spawn(command, [address], { stdio: 'ignore', detached: true });
  opener.on('error', () => {});
  opener.unref();
}
