import { describe, expect, it } from 'vitest';
import type { CombustionSpace } from '../../src/airflow/combustion.ts';
import { combustionCaution } from '../../src/airflow/combustion.ts';
import { depressurizationPa, draftLimitPa } from '../../src/airflow/depressurization.ts';
import { flowM3PerS } from '../../src/airflow/opening.ts';
import { convert } from '../../src/units/convert.ts';

const heater = { name: 'water heater', inputKW: convert(40_000, 'Btu/h', 'kW'), draft: 'natural' } as const;

const space: CombustionSpace = {
  appliances: [heater],
  volumeM3: 110,
  closingVents: true,
  ventsFeedAppliance: 'unknown',
};

function codes(given: CombustionSpace): string[] {
  return combustionCaution(given).cautions.map(({ code }) => code);
}

describe('volume rule', () => {
  it('asks 50 ft3 for each 1000 Btu/h (IFGC 304.5, quoted), printed as 4.8 m3/kW', () => {
    const { volume } = combustionCaution(space);
    expect(volume.method).toBe('volume');
    // 40 000 Btu/h need 2000 ft3; the constant is rounded to 4 digits
    expect(convert(volume.requiredM3!, 'm3', 'ft3')).toBeCloseTo(2000, 0);
    expect(volume.requiredM3! / volume.inputKW).toBeCloseTo(4.8, 1);
  });

  it('is met, not met or not shown', () => {
    const answer = (volumeM3: number, outdoorAirChangesPerHour?: number) =>
      combustionCaution({
        ...space,
        volumeM3,
        ...(outdoorAirChangesPerHour === undefined ? {} : { outdoorAirChangesPerHour }),
      }).volume.answer;
    const enough = convert(2001, 'ft3', 'm3');
    const short = convert(1999, 'ft3', 'm3');
    expect(answer(enough, 0.4)).toBe('met');
    expect(answer(enough)).toBe('not-shown');
    expect(answer(short, 0.4)).toBe('not-met');
    expect(answer(short)).toBe('not-met');
  });

  it('goes by the leakage rate below 0.40 air changes (21 and 15 ft3 per 1000 Btu/h over the rate, recalled)', () => {
    const tight = { ...space, outdoorAirChangesPerHour: 0.39 };
    const { volume } = combustionCaution(tight);
    expect(volume.method).toBe('leakage-rate');
    expect(convert(volume.requiredM3!, 'm3', 'ft3')).toBeCloseTo((21 / 0.39) * 40, -1);
    const fan = combustionCaution({ ...tight, appliances: [{ ...heater, draft: 'fan-assisted' }] });
    expect(convert(fan.volume.requiredM3!, 'm3', 'ft3')).toBeCloseTo((15 / 0.39) * 40, -1);
    const airtight = combustionCaution({ ...space, outdoorAirChangesPerHour: 0 });
    expect(airtight.volume).toMatchObject({ answer: 'not-met', requiredM3: null });
  });

  it('almost always fails in a sealed crawl space', () => {
    const sealed = combustionCaution({ ...space, volumeM3: 97, outdoorAirChangesPerHour: 0.1 });
    expect(sealed.volume.answer).toBe('not-met');
  });

  it('is not needed where every appliance brings its own air', () => {
    const direct = combustionCaution({ ...space, appliances: [{ ...heater, draft: 'direct-vent' }] });
    expect(direct.volume).toMatchObject({ answer: 'not-needed', requiredM3: 0, inputKW: 0 });
    expect(direct.draftLimitPa).toBeNull();
  });
});

describe('suction by fans', () => {
  const leakage = { coefficient: 0.018, exponent: 0.65 };

  it('is the pressure at which the leakage passes what the fans draw', () => {
    const suction = depressurizationPa(0.05, leakage);
    expect(flowM3PerS(leakage, suction)).toBeCloseTo(0.05, 12);
    expect(depressurizationPa(-0.02, leakage)).toBeLessThan(0);
    expect(depressurizationPa(0, leakage)).toBe(0);
  });

  it('rises when the vents are shut', () => {
    const before = depressurizationPa(0.05, { coefficient: 0.9, exponent: 0.5 });
    expect(depressurizationPa(0.05, leakage)).toBeGreaterThan(100 * before);
  });

  it('is held against the draft of the weakest appliance', () => {
    const fans = { netExhaustM3PerS: 0.05, leakage };
    const strong = combustionCaution({ ...space, ...fans });
    expect(strong.draftLimitPa).toBe(draftLimitPa.natural);
    expect(strong.depressurizationPa).toBeGreaterThan(draftLimitPa.natural);
    expect(strong.cautions.map(({ code }) => code)).toContain('suction-high');
    expect(codes({ ...space, ...fans, netExhaustM3PerS: 0.01 })).toContain('suction-estimate');
    expect(codes({ ...space, ...fans, appliances: [{ ...heater, draft: 'fan-assisted' }] })).toContain(
      'suction-estimate',
    );
    expect(codes(space)).toContain('suction-not-shown');
  });
});

describe('cautions', () => {
  it('always ask for the spillage test, alarms and a look for grilles, whatever the figures', () => {
    for (const volumeM3 of [10, 100_000]) {
      const given = {
        ...space,
        volumeM3,
        outdoorAirChangesPerHour: 5,
        netExhaustM3PerS: 0,
        leakage: { coefficient: 1, exponent: 0.5 },
      };
      expect(codes(given)).toEqual(
        expect.arrayContaining(['spillage-test', 'carbon-monoxide-alarm', 'vents-feed-appliance']),
      );
      for (const { message } of combustionCaution(given).cautions) expect(message).not.toMatch(/\bis safe\b/);
    }
  });

  it('forbid shutting vents that feed an appliance', () => {
    const fed = combustionCaution({ ...space, ventsFeedAppliance: 'yes' }).cautions.find(
      ({ code }) => code === 'vents-feed-appliance',
    );
    expect(fed!.message).toContain('do not shut them');
    expect(codes({ ...space, ventsFeedAppliance: 'no' })).not.toContain('vents-feed-appliance');
    expect(codes({ ...space, closingVents: false })).not.toContain('vents-feed-appliance');
  });

  it('keep to alarms with direct vent alone, and to the grille without appliances', () => {
    expect(codes({ ...space, appliances: [{ ...heater, draft: 'direct-vent' }] })).toEqual([
      'carbon-monoxide-alarm',
      'vents-feed-appliance',
    ]);
    expect(codes({ ...space, appliances: [] })).toEqual(['vents-feed-appliance']);
  });
});

describe('limits', () => {
  it('refuses negative or missing figures', () => {
    expect(() => combustionCaution({ ...space, volumeM3: -1 })).toThrow('volume, m3, must be from 0');
    expect(() => combustionCaution({ ...space, outdoorAirChangesPerHour: Number.NaN })).toThrow(
      'outdoor air changes per hour must be a number',
    );
    expect(() => combustionCaution({ ...space, appliances: [{ ...heater, inputKW: -3 }] })).toThrow(
      'water heater: input, kW, must be from 0',
    );
    expect(() =>
      combustionCaution({ ...space, netExhaustM3PerS: 0.1, leakage: { coefficient: 0, exponent: 0.65 } }),
    ).toThrow('leave the leakage out if unknown');
  });
});
