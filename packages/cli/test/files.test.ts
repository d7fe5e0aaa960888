import { mkdirSync, readdirSync, readFileSync, symlinkSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, test } from 'vitest';
import { readInput, standsAt, writeOutputs } from '../src/files.ts';
import { ownFolder } from './run-command.ts';

describe('writeOutputs', () => {
  test('writes all, makes folders, leaves no parts', async () => {
    const folder = ownFolder();
    await writeOutputs(
      [
        { path: 'a/b/one.txt', content: 'one' },
        { path: 'two.bin', content: Uint8Array.from([2, 0, 255]) },
      ],
      folder,
    );
    expect(readFileSync(join(folder, 'a/b/one.txt'), 'utf8')).toBe('one');
    expect([...readFileSync(join(folder, 'two.bin'))]).toEqual([2, 0, 255]);
    expect(readdirSync(folder).sort()).toEqual(['a', 'two.bin']);
  });

  test('when a later file cannot be written, the earlier one keeps its old content', async () => {
    const folder = ownFolder();
    writeFileSync(join(folder, 'one.txt'), 'old');
    writeFileSync(join(folder, 'wall'), '');
    const files = [
      { path: 'one.txt', content: 'new' },
      { path: 'wall/two.txt', content: 'two' },
    ];
    await expect(writeOutputs(files, folder)).rejects.toThrow(
      'wall/two.txt cannot be written: a part of the path is a file, not a folder. Name another folder. Nothing was written.',
    );
    expect(readFileSync(join(folder, 'one.txt'), 'utf8')).toBe('old');
    expect(readdirSync(folder).sort()).toEqual(['one.txt', 'wall']);
  });

  test('a name longer than the file system takes: nothing is left behind', async () => {
    const folder = ownFolder();
    const files = [
      { path: 'one.txt', content: 'one' },
      { path: `${'x'.repeat(250)}.txt`, content: 'two' },
    ];
    await expect(writeOutputs(files, folder)).rejects.toThrow(
      'cannot be written: the name is too long. Nothing was written.',
    );
    expect(readdirSync(folder)).toEqual([]);
  });

  test('a folder in the place of a file stops everything', async () => {
    const folder = ownFolder();
    mkdirSync(join(folder, 'two.txt'));
    const files = [
      { path: 'one.txt', content: 'one' },
      { path: 'two.txt', content: 'two' },
    ];
    await expect(writeOutputs(files, folder)).rejects.toThrow('two.txt is a folder. Move it away.');
    expect(readdirSync(folder)).toEqual(['two.txt']);
  });
});

describe('readInput and standsAt', () => {
  test('tell file, folder and nothing apart', async () => {
    const folder = ownFolder();
    writeFileSync(join(folder, 'file'), 'x');
    expect(await standsAt('file', folder)).toBe('file');
    expect(await standsAt('.', folder)).toBe('folder');
    expect(await standsAt('none', folder)).toBe('nothing');
    expect(new TextDecoder().decode(await readInput('file', folder))).toBe('x');
  });

  test('a link in a circle is told, not thrown bare', async () => {
    const folder = ownFolder();
    symlinkSync('round', join(folder, 'round'));
    await expect(readInput('round', folder)).rejects.toThrow(/^round cannot be read: /);
  });
});
