import { describe, expect, it } from 'vitest';
import { sniff } from '../../../src/screens/pictures/sniff.ts';

const text = (letters: string) => [...letters].map((letter) => letter.charCodeAt(0));
const container = (brand: string) => [0, 0, 0, 24, ...text('ftyp'), ...text(brand), 0, 0, 0, 0];
const kindOf = (bytes: number[], declared = '') => {
  const found = sniff(new Uint8Array(bytes), declared);
  return found === null ? null : [found.kind, found.mediaType, found.isHeic];
};

// First bytes as the formats' own standards give them (JPEG, PNG, RIFF, ISO 14496-12, Matroska, Ogg).
describe('what a file is by its first bytes', () => {
  it.each([
    [[0xff, 0xd8, 0xff, 0xe1], '', ['photo', 'image/jpeg', false]],
    [[0x89, ...text('PNG\r\n')], 'text/plain', ['photo', 'image/png', false]],
    [[...text('RIFF'), 1, 2, 3, 4, ...text('WEBP')], '', ['photo', 'image/webp', false]],
    [[...text('RIFF'), 1, 2, 3, 4, ...text('WAVE')], '', ['audio', 'audio/wav', false]],
    [container('heic'), 'image/jpeg', ['photo', 'image/heic', true]],
    [container('mif1'), '', ['photo', 'image/heic', true]],
    [container('avif'), '', ['photo', 'image/avif', false]],
    [container('isom'), '', ['clip', 'video/mp4', false]],
    [container('isom'), 'audio/mp4', ['audio', 'audio/mp4', false]],
    [container('M4A '), '', ['audio', 'audio/mp4', false]],
    [container('qt  '), 'video/quicktime', ['clip', 'video/quicktime', false]],
    [[0x1a, 0x45, 0xdf, 0xa3], 'video/webm', ['clip', 'video/webm', false]],
    [[0x1a, 0x45, 0xdf, 0xa3], 'audio/webm;codecs=opus', ['audio', 'audio/webm', false]],
    [text('OggS'), 'audio/ogg', ['audio', 'audio/ogg', false]],
  ] as const)('%j declared as "%s"', (bytes, declared, found) => {
    expect(kindOf([...bytes], declared)).toEqual(found);
  });

  it.each([[text('%PDF-1.7')], [text('<html>')], [[]]])('%j is none', (bytes) => {
    expect(kindOf(bytes, 'image/jpeg')).toBeNull();
  });
});
