/** An element of a text in tags: its name, its attributes, what is in it. */
export interface Element {
  readonly name: string;
  readonly attributes: Readonly<Record<string, string>>;
  readonly children: (Element | string)[];
}

const VOID = new Set(['meta', 'link', 'br', 'hr', 'img', 'col', 'input']);
const ATTRIBUTE = /\s+([A-Za-z_:][-\w:.]*)(?:="([^"<]*)")?/gy;

function attributesOf(text: string, at: string): Record<string, string> {
  const found: Record<string, string> = {};
  ATTRIBUTE.lastIndex = 0;
  let end = 0;
  for (let m = ATTRIBUTE.exec(text); m !== null; m = ATTRIBUTE.exec(text)) {
    if (m[1] in found) throw new Error(`attribute ${m[1]} twice in ${at}`);
    found[m[1]] = m[2] ?? '';
    end = ATTRIBUTE.lastIndex;
  }
  if (text.slice(end).trim() !== '') throw new Error(`cannot read attributes of ${at}`);
  return found;
}

function checkText(text: string): void {
  const bad = /&(?!(?:amp|lt|gt|quot|#39|nbsp);)/.exec(text);
  if (bad !== null) throw new Error(`bare & in "${text.slice(bad.index, bad.index + 30)}"`);
  if (text.includes('>')) throw new Error(`bare > in "${text.slice(0, 60)}"`);
}

/**
 * Reads a text in tags strictly: every tag is closed in its place, attributes are quoted and not doubled, no bare `<` or `&`.
 * Enough of XML for our own output; `html` allows elements that are never closed, and a style sheet as plain text.
 * @throws Error that names the first place where the text is not well formed
 */
export function readTags(source: string, kind: 'xml' | 'html'): Element {
  const text = source.replace(/^\s*<!doctype html>\s*/, '').trim();
  const root: Element = { name: '#root', attributes: {}, children: [] };
  const open: Element[] = [root];
  let at = 0;
  while (at < text.length) {
    const top = open[open.length - 1];
    const next = text.indexOf('<', at);
    const words = text.slice(at, next < 0 ? undefined : next);
    if (words !== '') {
      if (top.name !== 'style') checkText(words);
      if (top === root) throw new Error('text outside of every element');
      top.children.push(words);
    }
    if (next < 0) break;
    const end = text.indexOf('>', next);
    if (end < 0) throw new Error(`a tag never ends: ${text.slice(next, next + 40)}`);
    const tag = text.slice(next + 1, end);
    at = end + 1;
    if (tag.startsWith('/')) {
      if (open.length === 1 || top.name !== tag.slice(1))
        throw new Error(`</${tag.slice(1)}> closes <${top.name}>`);
      open.pop();
      continue;
    }
    const shut = tag.endsWith('/');
    const name = /^[A-Za-z][\w-]*/.exec(tag)?.[0];
    if (name === undefined) throw new Error(`not a tag: <${tag.slice(0, 40)}>`);
    const attributes = attributesOf(tag.slice(name.length, shut ? -1 : undefined), `<${tag.slice(0, 60)}>`);
    const element = { name, attributes, children: [] };
    top.children.push(element);
    if (!shut && !(kind === 'html' && VOID.has(name))) open.push(element);
  }
  if (open.length > 1) throw new Error(`<${open[open.length - 1].name}> is never closed`);
  if (root.children.length !== 1) throw new Error('there must be one outermost element');
  return root.children[0] as Element;
}

/** Every element below, itself included, in order. */
export function allOf(element: Element): Element[] {
  return [element, ...element.children.flatMap((c) => (typeof c === 'string' ? [] : allOf(c)))];
}

const ENTITIES: Readonly<Record<string, string>> = {
  '&amp;': '&',
  '&lt;': '<',
  '&gt;': '>',
  '&quot;': '"',
  '&#39;': "'",
};

/** All text inside an element, as a reader sees it. */
export function wordsOf(element: Element): string {
  const raw = element.children.map((c) => (typeof c === 'string' ? c : wordsOf(c))).join('');
  return raw.replace(/&(?:amp|lt|gt|quot|#39);/g, (e) => ENTITIES[e]);
}
