import type { Picture } from '../document/blocks.ts';
import { jpegForSharing } from './jpeg.ts';
import { pngForSharing } from './png.ts';

/** Made once for the same bytes, so that a file that shows a picture twice can hold it once. */
const made = new WeakMap<Uint8Array, Picture | null>();

/**
 * A picture that can be shown, without what the camera wrote about its place, time and maker; null for bytes that are
 * neither a whole JPEG nor a whole PNG. Which way up it is stays.
 */
export function readablePicture(bytes: Uint8Array): Picture | null {
  const known = made.get(bytes);
  if (known !== undefined) return known;
  const picture = read(bytes);
  made.set(bytes, picture);
  return picture;
}

function read(bytes: Uint8Array): Picture | null {
  if (bytes[0] === 0xff && bytes[1] === 0xd8) return jpegForSharing(bytes);
  if (bytes[0] === 0x89 && bytes[1] === 0x50) return pngForSharing(bytes);
  return null;
}
