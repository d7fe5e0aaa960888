/** Lines of a text with any of the usual line ends and with or without a byte order mark. */
export function linesOf(text: string): string[] {
  const body = text.charCodeAt(0) === 0xfeff ? text.slice(1) : text;
  if (!body.includes('\n') && body.includes('\r')) return body.split('\r');
  const lines = body.split('\n');
  for (let i = 0; i < lines.length; i++) {
    const line = lines[i]!;
    if (line.charCodeAt(line.length - 1) === 13) lines[i] = line.slice(0, -1);
  }
  return lines;
}

/** Fields of one comma-separated line; a field may stand in double quotes and then hold commas and doubled quotes. */
export function quotedFields(line: string): string[] {
  const fields: string[] = [];
  let field = '';
  let quoted = false;
  for (let i = 0; i < line.length; i++) {
    const c = line[i]!;
    if (c === '"') {
      if (quoted && line[i + 1] === '"') {
        field += c;
        i++;
      } else {
        quoted = !quoted;
      }
    } else if (c === ',' && !quoted) {
      fields.push(field.trim());
      field = '';
    } else {
      field += c;
    }
  }
  fields.push(field.trim());
  return fields;
}
