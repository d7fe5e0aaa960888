import { wrap } from './wrap.ts';

/** Notices of one section, each text once. */
export function noticeLines(notices: readonly { readonly message: string }[], columns: number): string[] {
  const messages = [...new Set(notices.map((n) => n.message))];
  return messages.flatMap((message) => wrap(message, columns, '  Note: '));
}
