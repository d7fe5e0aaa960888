import { randomBytes } from 'node:crypto';
import { mkdir, readFile, rename, rm, stat, writeFile } from 'node:fs/promises';
import { dirname, resolve } from 'node:path';
import { UsageError } from './usage-error.ts';

/** A file to be written. */
export interface OutputFile {
  readonly path: string;
  readonly content: Uint8Array | string;
}

/** What the system says about a failed access, in words that name the way out. */
function reason(error: unknown): string {
  const { code, message } = error as NodeJS.ErrnoException;
  switch (code) {
    case 'ENOTDIR':
    case 'EEXIST':
      return 'a part of the path is a file, not a folder. Name another folder.';
    case 'EISDIR':
      return 'it is a folder. Name a file.';
    case 'EACCES':
    case 'EPERM':
      return 'you may not do that there. Change the permissions or name another place.';
    case 'EROFS':
      return 'the disk is read-only. Name another place.';
    case 'ENOSPC':
      return 'the disk is full. Make room or name another place.';
    case 'ENAMETOOLONG':
      return 'the name is too long.';
    default:
      return message;
  }
}

/**
 * Reads a file.
 * @throws UsageError that says what to do
 */
export async function readInput(path: string, cwd: string): Promise<Uint8Array> {
  try {
    return await readFile(resolve(cwd, path));
  } catch (error) {
    const { code } = error as NodeJS.ErrnoException;
    if (code === 'ENOENT') throw new UsageError(`There is no file ${path}. Check the path.`);
    if (code === 'EISDIR') throw new UsageError(`${path} is a folder. Name a file in it.`);
    throw new UsageError(`${path} cannot be read: ${reason(error)}`);
  }
}

/** What stands at a path. */
export async function standsAt(path: string, cwd: string): Promise<'nothing' | 'folder' | 'file'> {
  try {
    return (await stat(resolve(cwd, path))).isDirectory() ? 'folder' : 'file';
  } catch {
    return 'nothing';
  }
}

/** Removes what was begun. What cannot be removed was not written either, or the first error has told of it. */
async function removeAll(paths: readonly string[]): Promise<void> {
  for (const path of paths) await rm(path, { force: true }).catch(() => {});
}

/**
 * Writes files all or none: each whole into a neighbor first, and only when every one is on disk are they renamed.
 * Missing folders are made. Should a renaming fail, the error says which files stand already.
 * @throws UsageError that says what to do
 */
export async function writeOutputs(files: readonly OutputFile[], cwd: string): Promise<void> {
  const beside: string[] = [];
  for (const { path, content } of files) {
    const target = resolve(cwd, path);
    const part = `${target}.${randomBytes(4).toString('hex')}.part`;
    try {
      if ((await standsAt(path, cwd)) === 'folder')
        throw new UsageError(`${path} is a folder. Move it away.`);
      await mkdir(dirname(target), { recursive: true });
      beside.push(part);
      await writeFile(part, content);
    } catch (error) {
      await removeAll(beside);
      if (error instanceof UsageError) throw error;
      throw new UsageError(`${path} cannot be written: ${reason(error)} Nothing was written.`);
    }
  }
  for (const [i, { path }] of files.entries()) {
    try {
      await rename(beside[i], resolve(cwd, path));
    } catch (error) {
      await removeAll(beside.slice(i));
      const standing = files.slice(0, i).map((f) => f.path);
      const stand =
        standing.length > 0 ? `Written before it: ${standing.join(', ')}.` : 'Nothing was written.';
      throw new UsageError(`${path} cannot be written: ${reason(error)} ${stand}`);
    }
  }
}
