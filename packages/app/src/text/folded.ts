/** Text for searching: without case and accents, but ñ apart from n. */
export function folded(text: string): string {
  return text
    .toLocaleLowerCase('es-US')
    .normalize('NFD')
    .replace(/n\u0303/g, 'ñ')
    .replace(/[\u0300-\u036f]/g, '');
}
