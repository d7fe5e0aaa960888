import type { Entry } from '@undercroft/record';

const STARTED_MS = Date.UTC(2031, 4, 14, 13);
const DEVICES = ['tabletaa', 'phonebbb', 'deskcccc'];

/** A stamp as the clock of the record writes it, one millisecond after the other. */
function stamp(step: number): string {
  const ms = (STARTED_MS + step).toString(36).padStart(9, '0');
  return `${ms}-0000-${DEVICES[step % DEVICES.length]}`;
}

/** A small generator with a fixed seed (after "mulberry32", public domain, from memory). */
function seeded(seed: number): () => number {
  let state = seed;
  return () => {
    state = (state + 0x6d2b79f5) | 0;
    let t = Math.imul(state ^ (state >>> 15), 1 | state);
    t = (t + Math.imul(t ^ (t >>> 7), 61 | t)) ^ t;
    return ((t ^ (t >>> 14)) >>> 0) / 2 ** 32;
  };
}

/** Order keys a0 ... zzzz... are not needed here: equal lengths that sort are enough. */
function orderKey(index: number): string {
  return `d${index.toString(36).padStart(5, '0')}V`;
}

const ground = { cover: 'bare-earth', surface: 'wet' };
const corners = [
  { id: 'a', at: { xM: 0, yM: 0 } },
  { id: 'b', at: { xM: 12, yM: 0 } },
  { id: 'c', at: { xM: 12, yM: 8 } },
];

/**
 * A log of a given length: one entry in five creates a reading or a pier, the others set a field of an item, move it or
 * remove it, mostly having seen the newest value of that field, sometimes not.
 */
export function longLog(length: number, seed = 20310514): Entry[] {
  const chance = seeded(seed);
  const entries: Entry[] = [];
  const items: { kind: string; item: string }[] = [];
  const newest = new Map<string, string>();
  const write = (kind: string, item: string, field: string, value: Entry['value'], seen: string[]) => {
    entries.push({
      id: stamp(entries.length),
      version: 1,
      who: 'Benedikta Aalto-Ruiz',
      deviceTime: '2031-05-14T09:00:00-04:00',
      kind,
      item,
      field,
      value,
      seen,
    });
    newest.set(`${item} ${field}`, entries[entries.length - 1].id);
  };
  write('header', 'header', '*', { title: 'A long log' }, []);
  write('plan', 'plan', '*', { outline: { kind: 'corners', corners }, ground }, []);
  while (entries.length < length) {
    const index = items.length;
    if (index === 0 || chance() < 0.2) {
      const pier = chance() < 0.3;
      const kind = pier ? 'pier' : 'observation';
      const item = `${kind}-${index.toString(36)}`;
      items.push({ kind, item });
      const place = { xM: Math.round(chance() * 1200) / 100, yM: Math.round(chance() * 800) / 100 };
      const value: Entry['value'] = pier
        ? { at: place, heightM: 0.9, material: 'hollow-block', order: orderKey(index) }
        : {
            quantity: 'relativeHumidity',
            value: chance(),
            place: { at: place },
            when: '2031-05-14T09:00:00-04:00',
            who: 'Benedikta Aalto-Ruiz',
            order: orderKey(index),
          };
      write(kind, item, '*', value, []);
      continue;
    }
    const { kind, item } = items[Math.floor(chance() * index)];
    const what = chance();
    const field =
      what < 0.04
        ? 'removed'
        : what < 0.1
          ? 'order'
          : what < 0.5
            ? 'note'
            : kind === 'pier'
              ? 'heightM'
              : 'value';
    const before = newest.get(`${item} ${field}`) ?? newest.get(`${item} *`);
    const seen = before === undefined || chance() < 0.03 ? [] : [before];
    const value: Entry['value'] =
      field === 'removed'
        ? chance() < 0.5
        : field === 'order'
          ? orderKey(Math.floor(chance() * 60_000))
          : field === 'note'
            ? `seen again ${entries.length}`
            : Math.round(chance() * 1000) / 1000 + 0.001;
    write(kind, item, field, value, seen);
  }
  return entries;
}
