/** What a captured file is, by its first bytes: a name or a declared type may be wrong or absent. */
export interface Sniffed {
  readonly kind: 'photo' | 'clip' | 'audio';
  readonly mediaType: string;
  /** True for a picture that many browsers cannot show. */
  readonly isHeic: boolean;
}

/** Brands of the ISO media container that stand for a still picture coded as HEVC. */
const HEIC = ['heic', 'heix', 'hevc', 'hevx', 'heim', 'heis', 'mif1', 'msf1', 'heif'];

const ascii = (bytes: Uint8Array, from: number, to: number) =>
  String.fromCharCode(...bytes.subarray(from, to));

const photo = (mediaType: string, isHeic = false): Sniffed => ({ kind: 'photo', mediaType, isHeic });
const clip = (mediaType: string): Sniffed => ({ kind: 'clip', mediaType, isHeic: false });
const audio = (mediaType: string): Sniffed => ({ kind: 'audio', mediaType, isHeic: false });

function ofContainer(brand: string, declared: string): Sniffed {
  if (brand === 'avif' || brand === 'avis') return photo('image/avif');
  if (HEIC.includes(brand)) return photo('image/heic', true);
  if (brand.startsWith('M4A') || declared.startsWith('audio/')) return audio('audio/mp4');
  return clip(brand === 'qt  ' ? 'video/quicktime' : 'video/mp4');
}

/**
 * Tells what a file is from its first 16 bytes or more.
 * @param declared type that the browser gives, for containers that hold sound or pictures alike
 * @returns null for what is neither picture, film nor sound
 */
export function sniff(bytes: Uint8Array, declared: string): Sniffed | null {
  if (bytes[0] === 0xff && bytes[1] === 0xd8 && bytes[2] === 0xff) return photo('image/jpeg');
  if (bytes[0] === 0x89 && ascii(bytes, 1, 4) === 'PNG') return photo('image/png');
  if (ascii(bytes, 0, 4) === 'GIF8') return photo('image/gif');
  if (ascii(bytes, 0, 4) === 'RIFF') {
    const form = ascii(bytes, 8, 12);
    if (form === 'WEBP') return photo('image/webp');
    return form === 'WAVE' ? audio('audio/wav') : null;
  }
  if (ascii(bytes, 4, 8) === 'ftyp') return ofContainer(ascii(bytes, 8, 12), declared);
  const isSound = declared.startsWith('audio/');
  if (bytes[0] === 0x1a && bytes[1] === 0x45 && bytes[2] === 0xdf && bytes[3] === 0xa3) {
    return isSound ? audio('audio/webm') : clip('video/webm');
  }
  if (ascii(bytes, 0, 4) === 'OggS') return isSound ? audio('audio/ogg') : clip('video/ogg');
  if (ascii(bytes, 0, 3) === 'ID3' || (bytes[0] === 0xff && (bytes[1] & 0xe0) === 0xe0)) {
    return audio('audio/mpeg');
  }
  return null;
}
