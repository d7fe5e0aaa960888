// Serves a folder of built files on this machine: `node scripts/serve.mjs FOLDER [PORT]`. Port 0 takes any free one.
import { createReadStream, statSync } from 'node:fs';
import { createServer } from 'node:http';
import { extname, join, resolve, sep } from 'node:path';
import { fileURLToPath } from 'node:url';

const TYPES = {
  '.html': 'text/html; charset=utf-8',
  '.js': 'text/javascript; charset=utf-8',
  '.css': 'text/css; charset=utf-8',
  '.json': 'application/json',
  '.webmanifest': 'application/manifest+json',
  '.svg': 'image/svg+xml',
  '.png': 'image/png',
  '.ttf': 'font/ttf',
  '.woff2': 'font/woff2',
  '.wasm': 'application/wasm',
};
/** Built files with a hash in their name never change. */
const FOREVER = /[/\\]assets[/\\]/;
const PORTS_TRIED = 20;

/** The file that an address names, or null for one outside the folder or none at all. */
function fileOf(folder, url) {
  let path;
  try {
    path = decodeURIComponent(new URL(url, 'http://localhost').pathname);
  } catch {
    return null;
  }
  const file = resolve(folder, `.${path.endsWith('/') ? `${path}index.html` : path}`);
  if (path.includes('\0') || !file.startsWith(folder + sep)) return null;
  return statSync(file, { throwIfNoEntry: false })?.isFile() ? file : null;
}

function answer(folder, request, response) {
  if (request.method !== 'GET' && request.method !== 'HEAD') {
    response.writeHead(405, { Allow: 'GET, HEAD' }).end();
    return;
  }
  const file = fileOf(folder, request.url);
  if (file === null) {
    response.writeHead(404, { 'Content-Type': 'text/plain; charset=utf-8' }).end('There is no such file.\n');
    return;
  }
  response.writeHead(200, {
    'Content-Type': TYPES[extname(file)] ?? 'application/octet-stream',
    'Cache-Control': FOREVER.test(file) ? 'public, max-age=31536000, immutable' : 'no-cache',
    'X-Content-Type-Options': 'nosniff',
  });
  if (request.method === 'HEAD') response.end();
  else createReadStream(file).pipe(response);
}

function listen(server, port) {
  return new Promise((done, failed) => {
    server.once('error', failed);
    server.listen(port, '127.0.0.1', () => {
      server.off('error', failed);
      done();
    });
  });
}

/** Serves a folder on 127.0.0.1, at the port or the next free one after it. Gives the address. */
export async function serve(folder, port) {
  const root = resolve(folder);
  const server = createServer((request, response) => answer(root, request, response));
  for (let tried = 0; ; tried += 1) {
    try {
      await listen(server, port === 0 ? 0 : port + tried);
      return `http://localhost:${server.address().port}/`;
    } catch (error) {
      if (error.code !== 'EADDRINUSE' || port === 0 || tried === PORTS_TRIED) throw error;
    }
  }
}

if (process.argv[1] === fileURLToPath(import.meta.url)) {
  const [folder, port = '0'] = process.argv.slice(2);
  console.log(await serve(join(process.cwd(), folder), Number(port)));
}
