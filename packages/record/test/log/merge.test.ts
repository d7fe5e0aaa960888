import { describe, expect, it } from 'vitest';
import { canonicalJson, JobLog } from '../../src/index.ts';
import { fromTheOtherSide, runMergeCase } from './merge-notation.ts';

/** What happens, and what must come of it. See merge-notation.ts for how to read it. */
const CASES: Readonly<Record<string, string>> = {
  'edit, then an edit that has seen it': `
    A: pier1.widthM = 0.4
    A>B
    B: pier1.widthM = 0.5
    A<>B
    => pier1.widthM = 0.5
    => history pier1.widthM: 0.3 0.4 0.5`,

  'two edits of one field: the later is shown, both are asked about': `
    A: pier1.widthM = 0.4
    B: pier1.widthM = 0.5
    A => pier1.widthM = 0.4
    B => pier1.widthM = 0.5
    A<>B
    => pier1.widthM = 0.5 | A:0.4 B:0.5
    => history pier1.widthM: 0.3 0.4 0.5`,

  'two edits that say the same': `
    A: pier1.widthM = 0.4
    B: pier1.widthM = 0.4
    A<>B
    => pier1.widthM = 0.4
    => history pier1.widthM: 0.3 0.4 0.4`,

  'edits of different fields of one item': `
    A: pier1.widthM = 0.4
    B: pier1.depthM = 0.5
    A<>B
    => pier1.widthM = 0.4
    => pier1.depthM = 0.5`,

  'equal objects whose keys stand in another order': `
    A: pier1.at = {"xM":3,"yM":2}
    B: pier1.at = {"yM":2,"xM":3}
    A<>B
    => pier1.at = {"xM":3,"yM":2}`,

  'several edits on one device before the devices meet': `
    A: pier1.widthM = 0.4
    A: pier1.widthM = 0.45
    B: pier1.widthM = 0.5
    B: pier1.widthM = 0.55
    A<>B
    => pier1.widthM = 0.55 | A:0.45 B:0.55
    => history pier1.widthM: 0.3 0.4 0.45 0.5 0.55`,

  'an edit after a disagreement settles it': `
    A: pier1.widthM = 0.4
    B: pier1.widthM = 0.5
    A<>B
    A: pier1.widthM = 0.6
    A<>B
    => pier1.widthM = 0.6`,

  'settled for the side that was not shown': `
    A: pier1.widthM = 0.4
    B: pier1.widthM = 0.5
    A<>B
    B: settle pier1.widthM = A
    A<>B
    => pier1.widthM = 0.4
    => history pier1.widthM: 0.3 0.4 0.5 0.4`,

  'settled on both devices, differently': `
    A: pier1.widthM = 0.4
    B: pier1.widthM = 0.5
    A<>B
    A: settle pier1.widthM = A
    B: settle pier1.widthM = B
    A<>B
    => pier1.widthM = 0.5 | A:0.4 B:0.5`,

  'settled on both devices, alike': `
    A: pier1.widthM = 0.4
    B: pier1.widthM = 0.5
    A<>B
    A: settle pier1.widthM = B
    B: settle pier1.widthM = B
    A<>B
    => pier1.widthM = 0.5`,

  'settled, then an edit arrives late that had seen neither': `
    A: pier1.widthM = 0.4
    B: pier1.widthM = 0.5
    C: pier1.widthM = 0.6
    A<>B
    A: settle pier1.widthM = A
    A<>B
    A => pier1.widthM = 0.4
    A<>C
    A>B
    => pier1.widthM = 0.4 | A:0.4 C:0.6
    => history pier1.widthM: 0.3 0.4 0.5 0.6 0.4`,

  'three devices, one field': `
    A: pier1.widthM = 0.4
    B: pier1.widthM = 0.5
    C: pier1.widthM = 0.6
    A<>B
    B<>C
    C>A
    => pier1.widthM = 0.6 | A:0.4 B:0.5 C:0.6`,

  'three devices in a row: the middle one had seen the first': `
    A: pier1.widthM = 0.4
    A>B
    B: pier1.widthM = 0.5
    B>C
    C => pier1.widthM = 0.5
    C: pier1.widthM = 0.6
    C>A
    C>B
    => pier1.widthM = 0.6
    => history pier1.widthM: 0.3 0.4 0.5 0.6`,

  'an optional field taken away': `
    A: pier1.note = unset
    A<>B
    => pier1.note = unset
    => history pier1.note: "cracked" unset`,

  'an optional field taken away and edited': `
    A: pier1.note = "sound"
    B: pier1.note = unset
    A<>B
    => pier1.note = unset | A:"sound" B:unset`,

  'a field with a default taken away shows the default': `
    A: pier1.widthM = unset
    A<>B
    => pier1.widthM = 0.4`,

  'an optional field first set on both': `
    A: pier2.heightM = 0.8
    B: pier2.heightM = 0.9
    A<>B
    => pier2.heightM = 0.9 | A:0.8 B:0.9`,

  'removed by one who had seen everything': `
    A: pier1.widthM = 0.4
    A>B
    B: remove pier1
    A<>B
    => pier1 is gone
    => order: pier2 pier3`,

  'removed on both': `
    A: remove pier1
    B: remove pier1
    A<>B
    => pier1 is gone`,

  'removed on one, edited on the other: it stays and a person is asked': `
    A: remove pier1
    B: pier1.widthM = 0.5
    A<>B
    => pier1 is there | A:removed B:0.5
    => pier1.widthM = 0.5`,

  'edited on one, removed later on the other': `
    A: pier1.widthM = 0.5
    B: remove pier1
    A<>B
    => pier1 is there | A:0.5 B:removed`,

  'removed on two, one of which had seen the edit': `
    A: pier1.widthM = 0.5
    A>B
    B: remove pier1
    C: remove pier1
    B<>C
    C<>A
    => pier1 is gone`,

  'removed on two, of which the later one had seen the edit': `
    C: remove pier1
    A: pier1.widthM = 0.5
    A>B
    B: remove pier1
    B<>C
    C<>A
    => pier1 is gone`,

  'removal met an edit, settled for the removal': `
    A: remove pier1
    B: pier1.widthM = 0.5
    A<>B
    B: settle pier1 = A
    A<>B
    => pier1 is gone`,

  'removal met an edit, settled for the edit': `
    A: remove pier1
    B: pier1.widthM = 0.5
    A<>B
    A: settle pier1 = B
    A<>B
    => pier1 is there
    => pier1.widthM = 0.5`,

  'removal met an edit whose value is true: settled for the edit': `
    A: remove pier1
    B: pier1.wrapSealed = true
    A<>B
    A: settle pier1 = B
    A<>B
    => pier1 is there
    => pier1.wrapSealed = true`,

  'removed, seen, restored': `
    A: remove pier1
    A>B
    B: restore pier1
    A<>B
    => pier1 is there
    => order: pier1 pier2 pier3`,

  'restored, then edited, then removed again': `
    A: remove pier1
    A<>B
    B: restore pier1
    B: pier1.widthM = 0.5
    A<>B
    A: remove pier1
    A<>B
    => pier1 is gone
    => history pier1.removed: true false true`,

  'restored on one, removed again on the other': `
    A: remove pier1
    A<>B
    A: restore pier1
    A<>C
    C: remove pier1
    B: restore pier1
    B<>C
    A<>B
    => pier1 is there | B:false C:removed`,

  'a disagreement in an item that is removed does not ask': `
    A: pier1.widthM = 0.4
    B: pier1.widthM = 0.5
    A<>B
    A: remove pier1
    A<>B
    => pier1.widthM = unset
    => pier1 is gone`,

  'and asks again when it is restored': `
    A: pier1.widthM = 0.4
    B: pier1.widthM = 0.5
    A<>B
    A: remove pier1
    A<>B
    B: restore pier1
    A<>B
    => pier1.widthM = 0.5 | A:0.4 B:0.5`,

  'moved on one, removed on the other: moving is not an edit': `
    A: move pier1 after pier3
    B: remove pier1
    A<>B
    => pier1 is gone`,

  'created on one': `
    A: create pier9 {"widthM":0.7}
    A<>B
    => pier9.widthM = 0.7
    => order: pier1 pier2 pier3 pier9`,

  'two piers created in the same place of the list': `
    A: create pier8
    A: create pier7
    B: create pier9
    A<>B
    => order: pier1 pier2 pier3 pier8 pier9 pier7`,

  'the same item imported on both from one file': `
    A: create pier9 {"widthM":0.7}
    B: create pier9 {"widthM":0.7}
    A<>B
    => pier9.widthM = 0.7
    => pier9 is there
    => history pier9.widthM: 0.7 0.7`,

  'the same item imported on both from files that differ': `
    A: create pier9 {"widthM":0.7,"depthM":0.6}
    B: create pier9 {"widthM":0.8,"note":"wet"}
    A<>B
    => pier9.widthM = 0.8 | A:0.7 B:0.8
    => pier9.depthM = 0.6
    => pier9.note = "wet"`,

  'imported on both, then edited on one before they meet': `
    A: create pier9 {"widthM":0.7}
    B: create pier9 {"widthM":0.7}
    B: pier9.widthM = 0.9
    A<>B
    => pier9.widthM = 0.9 | A:0.7 B:0.9`,

  'imported on both, edited after they met': `
    A: create pier9 {"widthM":0.7}
    B: create pier9 {"widthM":0.8}
    A<>B
    A: pier9.widthM = 0.9
    A<>B
    => pier9.widthM = 0.9`,

  'imported on both, removed after they met': `
    A: create pier9 {"widthM":0.7}
    B: create pier9 {"widthM":0.8}
    A<>B
    A: remove pier9
    A<>B
    => pier9 is gone`,

  'imported on both, removed on one before they met': `
    A: create pier9 {"widthM":0.7}
    B: create pier9 {"widthM":0.7}
    A: remove pier9
    A<>B
    => pier9 is there | A:removed B:{"at":{"xM":1,"yM":5},"order":"a3","widthM":0.7}`,

  'moved on one': `
    A: move pier3 first
    A<>B
    => order: pier3 pier1 pier2`,

  'moved behind another': `
    A: move pier1 after pier2
    A<>B
    => order: pier2 pier1 pier3`,

  'one item moved to two places: the later place, and nobody is asked': `
    A: move pier1 after pier3
    B: move pier1 after pier2
    A<>B
    => order: pier2 pier1 pier3`,

  'two items moved to one place': `
    A: move pier2 first
    B: move pier3 first
    A<>B
    => order: pier2 pier3 pier1`,

  'moved between two that share a key': `
    A: move pier2 first
    B: move pier3 first
    A<>B
    A: move pier1 after pier2
    A<>B
    => order: pier2 pier3 pier1`,

  'moved and edited': `
    A: move pier1 after pier3
    B: pier1.widthM = 0.5
    A<>B
    => order: pier2 pier3 pier1
    => pier1.widthM = 0.5`,

  'restored where it was': `
    A: remove pier2
    A: restore pier2
    A<>B
    => order: pier1 pier2 pier3`,

  'a clock a year ahead wins where nobody had seen the other': `
    A: clock +365 days
    A: pier1.widthM = 0.4
    B: pier1.widthM = 0.5
    A<>B
    => pier1.widthM = 0.4 | A:0.4 B:0.5`,

  'a clock a year ahead does not win over one who has seen it': `
    A: clock +365 days
    A: pier1.widthM = 0.4
    A>B
    B: pier1.widthM = 0.5
    A<>B
    => pier1.widthM = 0.5
    => history pier1.widthM: 0.3 0.5 0.4`,

  'a clock a year behind replaces what it has seen, though its stamps sort before': `
    A: clock -365 days
    A: pier1.widthM = 0.4
    A: pier1.widthM = 0.45
    A>B
    B: pier1.depthM = 0.5
    B>A
    A: pier1.widthM = 0.6
    A<>B
    => pier1.widthM = 0.6
    => history pier1.widthM: 0.4 0.45 0.6 0.3`,

  'a clock a year ahead, set right': `
    A: clock +365 days
    A: pier1.widthM = 0.4
    A: clock +0 days
    A: pier1.widthM = 0.5
    A: pier1.widthM = 0.6
    A<>B
    => pier1.widthM = 0.6`,

  'a removal by a clock a year ahead, an edit by one who has not seen it': `
    A: clock +365 days
    A: remove pier1
    B: pier1.widthM = 0.5
    A<>B
    => pier1 is there | A:removed B:0.5`,
};

describe.each(Object.entries(CASES))('%s', (_, text) => {
  it('comes out as said, and again when everything is sent twice', () => {
    expect(runMergeCase(text).misses).toEqual([]);
  });

  it('comes out the same from the other side', () => {
    expect(runMergeCase(fromTheOtherSide(text)).misses).toEqual([]);
  });

  it('folds the same from scratch', () => {
    for (const log of runMergeCase(text).logs) {
      const again = new JobLog(log.jobId, log.entries().reverse());
      expect(canonicalJson(again.fold())).toBe(canonicalJson(log.fold()));
      expect(again.disagreements()).toEqual(log.disagreements());
    }
  });
});

describe('the notation', () => {
  it('says what it found instead', () => {
    expect(runMergeCase('A: pier1.widthM = 0.4\n=> pier1.widthM = 0.5').misses).toContain(
      'A => pier1.widthM = 0.4, not pier1.widthM = 0.5',
    );
    expect(
      runMergeCase('A: pier1.widthM = 0.4\nB: pier1.widthM = 0.5\nA<>B\n=> pier1.widthM = 0.5').misses,
    ).toContain('B => pier1.widthM = 0.5 | A:0.4 B:0.5, not pier1.widthM = 0.5');
  });

  it('refuses a line that it does not know', () => {
    expect(() => runMergeCase('A: paint pier1')).toThrow('does not know "paint pier1"');
    expect(() => runMergeCase('A pier1')).toThrow('does not know "A pier1"');
    expect(() => runMergeCase('A: settle pier1.widthM = B')).toThrow('nothing of B to settle');
  });
});
