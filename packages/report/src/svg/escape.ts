const ENTITIES: Readonly<Record<string, string>> = {
  '&': '&amp;',
  '<': '&lt;',
  '>': '&gt;',
  '"': '&quot;',
  "'": '&#39;',
};

/** What XML forbids or no reader can show: control characters, halves of a surrogate pair, noncharacters. */
const UNFIT = /(?![\t\n\r])\p{Cc}|\p{Cs}|[\ufffe\uffff]/gu;

/** Text safe between tags and inside quoted attributes of HTML and XML. */
export function escapeText(text: string): string {
  return text.replace(UNFIT, '\ufffd').replace(/[&<>"']/g, (sign) => ENTITIES[sign]);
}
