import {
  type Change,
  canonicalJson,
  JobLog,
  type RecordIssue,
  type Side,
  settleWith,
  writeEntry,
} from '../../src/index.ts';
import { authorOn, START_MS, smallLog } from '../small-job.ts';

/*
 * A merge case is a text. Lines that act, each a second after the one before:
 *
 *   A: pier1.widthM = 0.4          device A sets a field; `unset` takes its value away
 *   A: create pier9                with the least that a pier needs, or with fields: create pier9 {"widthM":0.7}
 *   A: remove pier1                A: restore pier1
 *   A: move pier2 after pier1      A: move pier2 first
 *   A: settle pier1.widthM = B     takes what B had set; for a removal that met an edit: A: settle pier1 = B
 *   A: clock +365 days             from here on the clock of A is wrong
 *   A>C                            A sends C all it has
 *   A<>B                           both ways
 *
 * Lines that say what must hold, on all devices, or on one with its name before the arrow:
 *
 *   => pier1.widthM = 0.5 | A:0.4 B:0.5     the shown value | both sides, if and only if there is a disagreement
 *   => pier1 is there | A:removed B:0.5     or `is gone`; the sides where a removal met an edit
 *   => order: pier2 pier1 pier3
 *   => history pier1.widthM: 0.3 0.4 0.5    every value that the field ever had, in the order of the stamps
 */

const DAY_MS = 24 * 3600 * 1000;

interface Device {
  readonly name: string;
  readonly log: JobLog;
  clockOffMs: number;
}

/** What a case leaves: its devices, and every line that did not hold with what was found. */
export interface Outcome {
  readonly logs: readonly JobLog[];
  readonly misses: readonly string[];
}

const kindOf = (item: string) => item.replace(/\d+$/, '');
const deviceId = (name: string) => `device${name.toLowerCase()}`;

function read(text: string): unknown {
  return text === 'unset' ? null : JSON.parse(text);
}

function written(value: unknown): string {
  return value === undefined || value === null ? 'unset' : canonicalJson(value);
}

function sideText({ who, field, value }: Side): string {
  return `${who}:${field === 'removed' && value === true ? 'removed' : written(value)}`;
}

function disagreementOver(log: JobLog, item: string, field: string): readonly Side[] {
  return log.disagreements().find((d) => d.item === item && d.field === field)?.sides ?? [];
}

/** The lines that act on a device: their form and the change they make. */
const CHANGES: readonly [RegExp, (log: JobLog, ...parts: string[]) => Change][] = [
  [
    /^create (\w+)(?: (.+))?$/,
    (_, item, value) => ({
      do: 'create',
      kind: kindOf(item),
      item,
      value: { at: { xM: 1, yM: 5 }, ...(value === undefined ? {} : JSON.parse(value)) },
    }),
  ],
  [/^remove (\w+)$/, (_, item) => ({ do: 'remove', kind: kindOf(item), item })],
  [/^restore (\w+)$/, (_, item) => ({ do: 'restore', kind: kindOf(item), item })],
  [/^move (\w+) after (\w+)$/, (_, item, after) => ({ do: 'move', kind: kindOf(item), item, after })],
  [/^move (\w+) first$/, (_, item) => ({ do: 'move', kind: kindOf(item), item, after: null })],
  [
    /^settle (\w+)(?:\.(\w+))? = (\w)$/,
    (log, item, field, who) => {
      const open = log.disagreements().find((d) => d.item === item && d.field === (field ?? 'removed'));
      const side = open?.sides.find((s) => s.who === who);
      if (open === undefined || side === undefined) throw new Error(`nothing of ${who} to settle at ${item}`);
      return settleWith(open, side);
    },
  ],
  [
    /^(\w+)\.(\w+) = (.+)$/,
    (_, item, field, value) => ({ do: 'set', kind: kindOf(item), item, field, value: read(value) }),
  ],
];

/** The lines that say what must hold: their form, and what a log shows instead (in the same words). */
const CLAIMS: readonly [RegExp, (log: JobLog, ...parts: string[]) => string][] = [
  [
    /^order:/,
    (log) =>
      `order: ${log
        .fold()
        .job?.plan.piers.map((pier) => pier.id)
        .join(' ')}`,
  ],
  [
    /^history (\w+)\.(\w+):/,
    (log, item, field) => {
      const values = log.history(kindOf(item), item)?.field(field)?.values ?? [];
      return `history ${item}.${field}: ${values.map((v) => written(v.value)).join(' ')}`;
    },
  ],
  [
    /^(\w+) is /,
    (log, item) => {
      const there = log.fold().job?.plan.piers.some((pier) => pier.id === item);
      return withSides(`${item} is ${there ? 'there' : 'gone'}`, disagreementOver(log, item, 'removed'));
    },
  ],
  [
    /^(\w+)\.(\w+) =/,
    (log, item, field) => {
      const pier = log.fold().job?.plan.piers.find((p) => p.id === item) as
        | Record<string, unknown>
        | undefined;
      return withSides(`${item}.${field} = ${written(pier?.[field])}`, disagreementOver(log, item, field));
    },
  ],
];

function withSides(text: string, sides: readonly Side[]): string {
  return sides.length === 0 ? text : `${text} | ${sides.map(sideText).sort().join(' ')}`;
}

function matched<T>(forms: readonly [RegExp, T][], text: string): { make: T; parts: string[] } {
  for (const [form, make] of forms) {
    const match = form.exec(text);
    if (match !== null) return { make, parts: match.slice(1) };
  }
  throw new Error(`a merge case does not know "${text}"`);
}

class Running {
  readonly #devices = new Map<string, Device>();
  #nowMs = START_MS;
  readonly misses: string[] = [];

  get logs(): JobLog[] {
    return [...this.#devices.values()].map((device) => device.log);
  }

  #device(name: string): Device {
    let device = this.#devices.get(name);
    if (device === undefined) {
      device = { name, log: new JobLog('small', smallLog()), clockOffMs: 0 };
      this.#devices.set(name, device);
    }
    return device;
  }

  run(line: string): void {
    const sync = /^(\w)(<?)>(\w)$/.exec(line);
    const act = /^(\w): (.+)$/.exec(line);
    const claim = /^(\w)? ?=> (.+)$/.exec(line);
    if (sync !== null) {
      this.#send(sync[1], sync[3]);
      if (sync[2] === '<') this.#send(sync[3], sync[1]);
    } else if (act !== null) this.#act(this.#device(act[1]), act[2]);
    else if (claim !== null) this.#check(claim[1], claim[2]);
    else throw new Error(`a merge case does not know "${line}"`);
  }

  #send(from: string, to: string): void {
    for (const entry of this.#device(from).log.entries()) this.#device(to).log.add(entry);
  }

  #act(device: Device, what: string): void {
    const clock = /^clock ([+-]\d+) days$/.exec(what);
    if (clock !== null) {
      device.clockOffMs = Number(clock[1]) * DAY_MS;
      return;
    }
    this.#nowMs += 1000;
    const { make, parts } = matched(CHANGES, what);
    const author = authorOn(deviceId(device.name), this.#nowMs + device.clockOffMs, device.name);
    const made: { entry: Parameters<JobLog['add']>[0] } | { issues: readonly RecordIssue[] } = writeEntry(
      device.log,
      author,
      make(device.log, ...parts),
    );
    if ('issues' in made) throw new Error(`${device.name}: ${what}: ${JSON.stringify(made.issues)}`);
    device.log.add(made.entry);
  }

  #check(only: string | undefined, claim: string): void {
    const { make, parts } = matched(CLAIMS, claim);
    const [text, sides] = claim.split(' | ');
    const wanted = sides === undefined ? text : `${text} | ${sides.split(' ').sort().join(' ')}`;
    for (const { name, log } of this.#devices.values()) {
      if (only !== undefined && only !== name) continue;
      const found = make(log, ...parts);
      if (found !== wanted) this.misses.push(`${name} => ${found}, not ${wanted}`);
    }
  }

  /** Everybody sends everybody everything again, last first. */
  repeat(): void {
    const all = this.logs.flatMap((log) => log.entries()).reverse();
    for (const log of this.logs) for (const entry of all) log.add(entry);
  }
}

function linesOf(text: string): string[] {
  return text
    .split('\n')
    .map((line) => line.trim())
    .filter((line) => line !== '');
}

/** Runs a case. Where its last lines are claims about all devices, they must hold again after everything is sent twice. */
export function runMergeCase(text: string): Outcome {
  const running = new Running();
  const lines = linesOf(text);
  for (const line of lines) running.run(line);
  running.repeat();
  const claims = lines.slice(lines.findLastIndex((line) => !line.startsWith('=>')) + 1);
  for (const line of claims) running.run(line);
  return { logs: running.logs, misses: running.misses };
}

/** The same case with the devices A and B in each other's place. */
export function fromTheOtherSide(text: string): string {
  return text.replace(/\b[AB]\b/g, (name) => (name === 'A' ? 'B' : 'A'));
}
