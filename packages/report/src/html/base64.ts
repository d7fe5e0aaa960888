const DIGITS = 'ABCDEFGHIJKLMNOPQRSTUVWXYZabcdefghijklmnopqrstuvwxyz0123456789+/';

/** Bytes as base64 (RFC 4648 section 4), on every platform alike. */
export function base64(bytes: Uint8Array): string {
  const out: string[] = [];
  for (let i = 0; i < bytes.length; i += 3) {
    const left = bytes.length - i;
    const three = (bytes[i] << 16) | ((bytes[i + 1] ?? 0) << 8) | (bytes[i + 2] ?? 0);
    const digit = (shift: number) => DIGITS[(three >> shift) & 63];
    out.push(digit(18), digit(12), left > 1 ? digit(6) : '=', left > 2 ? digit(0) : '=');
  }
  return out.join('');
}
