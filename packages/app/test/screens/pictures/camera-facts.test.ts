import { describe, expect, it } from 'vitest';
import { timeOf } from '../../../src/screens/pictures/capture.ts';
import { factsOf } from '../../../src/screens/pictures/exif.ts';

describe('what a camera wrote', () => {
  it('is a moment only where it wrote its offset', () => {
    const facts = factsOf({ DateTimeOriginal: '2031:05:14 09:20:00', OffsetTimeOriginal: '-04:00' });
    expect(facts.clock).toBe('2031:05:14 09:20:00 -04:00');
    expect(Date.parse(facts.takenAt ?? '')).toBe(Date.UTC(2031, 4, 14, 13, 20));
    expect(factsOf({ DateTimeOriginal: '2031:05:14 09:20:00' })).toEqual({ clock: '2031:05:14 09:20:00' });
    expect(factsOf({ DateTimeOriginal: '0000:00:00 00:00:00', OffsetTimeOriginal: '-04:00' }).takenAt).toBe(
      undefined,
    );
  });

  it('tells how wide the lens looks', () => {
    // A lens of 18 mm on film of 36 mm looks 90° wide: twice the angle whose tangent is 1.
    expect(factsOf({ FocalLengthIn35mmFormat: 18 }).fieldOfViewDeg).toBe(90);
    expect(factsOf({ FocalLengthIn35mmFormat: 0 })).toEqual({});
    expect(factsOf({ FocalLengthIn35mmFormat: 'wide' })).toEqual({});
  });
});

describe('when a file was taken', () => {
  const since = Date.UTC(2031, 4, 14, 13, 0);
  const now = since + 20_000;
  const moment = (text: string) => Date.parse(text);

  it('is now by the app’s clock for what came from the camera, whatever the camera says', () => {
    const facts = factsOf({ DateTimeOriginal: '2019:01:01 00:00:00', OffsetTimeOriginal: '+00:00' });
    const time = timeOf({ lastModified: since + 15_000, since, now }, facts);
    expect(moment(time.takenAt)).toBe(now);
    expect(time.deviceTime).toBe('2019:01:01 00:00:00 +00:00');
  });

  it('is the camera’s time for an older file, else that of the file', () => {
    const facts = factsOf({ DateTimeOriginal: '2031:05:01 08:00:00', OffsetTimeOriginal: '-04:00' });
    const lastModified = since - 86_400_000;
    expect(moment(timeOf({ lastModified, since, now }, facts).takenAt)).toBe(Date.UTC(2031, 4, 1, 12, 0));
    const time = timeOf({ lastModified, since, now }, {});
    expect(moment(time.takenAt)).toBe(lastModified);
    expect(moment(time.deviceTime)).toBe(lastModified);
  });
});
