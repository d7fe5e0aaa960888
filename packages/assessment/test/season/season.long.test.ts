import { describe, expect, it } from 'vitest';
import { expectSoundYears, shared, weatherFiles } from './shared-weather.ts';

if (!shared) {
  process.stderr.write(
    'NOT RUN: season.long.test.ts needs UNDERCROFT_SHARED, the path of the shared reference data.\n',
  );
}

describe.skipIf(!shared)('years in typical weather of every place of the shared data', () => {
  it('are of 22 places', () => {
    expect(weatherFiles).toHaveLength(22);
  });

  it.each(weatherFiles)('%s: as found, repaired and failing, closed and settled', (file) => {
    expectSoundYears(file);
  });
});
