import { gzipSync } from 'node:zlib';
import { describe, expect, it } from 'vitest';
import type { ReadResult } from '../../src/climate/read-issue.ts';
import { looksGzipped, readWeather } from '../../src/climate/read-weather.ts';
import { epwLines, tmy3Lines } from './made-weather.ts';

const bytesOf = (text: string, encoding: BufferEncoding = 'utf8'): Uint8Array =>
  new Uint8Array(Buffer.from(text, encoding));
const epw = epwLines().join('\r\n');

function messageOf(result: ReadResult): string {
  expect(result.ok).toBe(false);
  return result.ok ? '' : result.issues[0]!.message;
}

describe('the layout is told by the content', () => {
  it.each([
    ['EPW', epw, 'weather.csv', 'EPW layout'],
    ['TMY3', tmy3Lines().join('\n'), 'weather.epw', 'TMY3 layout'],
  ])('%s, whatever the name', (_layout, text, name, source) => {
    const result = readWeather(bytesOf(text), name);
    expect(result.ok && result.year.source).toContain(source);
  });

  it('an EPW file without its first line is still known as one', () => {
    const text = epwLines().slice(1).join('\n');
    expect(messageOf(readWeather(bytesOf(text), 'a.epw'))).toContain('LOCATION is missing');
  });

  it('hours without any head line are still known as an EPW file', () => {
    expect(messageOf(readWeather(bytesOf(epwLines().slice(8).join('\n')), 'a.epw'))).toContain('LOCATION');
  });

  it('a TMY3 file without its first line is still known as one', () => {
    const text = tmy3Lines().slice(1).join('\n');
    expect(messageOf(readWeather(bytesOf(text), 'a.csv'))).toContain('station number');
  });
});

describe('encodings', () => {
  it('UTF-16 with a byte order mark', () => {
    expect(readWeather(bytesOf(`\ufeff${epw}`, 'utf16le'), 'a.epw').ok).toBe(true);
  });

  it.each(['utf8', 'latin1'] as const)('a place name with an accent in %s', (encoding) => {
    const result = readWeather(bytesOf(epw.replace('Madeville', 'Mâdeville'), encoding), 'a.epw');
    expect(result.ok && result.year.place.name).toBe('Mâdeville, ZZ');
  });
});

describe('what is no weather file gets one issue', () => {
  it.each([
    ['a gzip stream', new Uint8Array(gzipSync(epw)), 'is a gzip-compressed file'],
    ['a zip archive', new Uint8Array([0x50, 0x4b, 3, 4, 20, 0]), 'is a zip archive or a spreadsheet'],
    ['binary data', new Uint8Array([1, 0, 2, 0, 3]), 'is not a text file'],
    ['nothing', new Uint8Array(0), 'is empty'],
    ['blank lines', bytesOf('\n \r\n'), 'is empty'],
    ['a letter', bytesOf('Dear reader,\nhere is the weather.\n'), 'is in no layout that can be read'],
  ])('%s', (_what, bytes, message) => {
    const result = readWeather(bytes, 'given.dat');
    expect(messageOf(result)).toContain(`given.dat ${message}`);
    expect(result.ok ? 0 : result.issueCount).toBe(1);
  });

  it('gzip is known by its first bytes only', () => {
    expect(looksGzipped(new Uint8Array(gzipSync('x')))).toBe(true);
    expect(looksGzipped(bytesOf(epw))).toBe(false);
    expect(looksGzipped(new Uint8Array([0x1f]))).toBe(false);
  });
});
