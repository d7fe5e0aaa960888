import { all, any, is } from '../../condition.ts';
import { cite } from '../../sources.ts';
import { answer, beyond, breach, breaches, type DefectRules, together } from '../proof.ts';

const machine = is('dehumidifierPresent', true);

/** Dehumidifier, condensate, air movement, soil-gas exhaust, ducts. */
export const dryAirRules: Readonly<Record<string, DefectRules>> = {
  'dehumidifier-facing-wall': {
    appliesWhen: machine,
    proofs: breaches('DHU-08a', 'DHU-08b'),
    also: [breach('DHU-09')],
    hints: [breach('DHU-10')],
  },
  'dehumidifier-too-small': {
    appliesWhen: machine,
    proofs: [
      together(
        beyond('dehumidifierRunShare', '>', [0.9, '90 %']),
        beyond('airRelativeHumidityMean7Day', '>', [0.6, '60 %'], cite('epaMoisture', 'quoted')),
      ),
    ],
    also: [breach('UNV-10')],
    hints: [breach('DHU-04')],
  },
  'dehumidifier-out-of-reach': {
    appliesWhen: machine,
    proofs: breaches('DHU-11', 'DHU-12a'),
    also: breaches('DHU-12b', 'APP-03a', 'APP-03b'),
  },
  'condensate-pump-loose': {
    appliesWhen: is('condensatePump', true),
    proofs: [answer('condensatePumpFixed', false), answer('condensatePumpCutout', false)],
    also: [beyond('condensatePumpAboveLinerM', '<', [0.0762, '3 in', '76 mm'])],
    worse: [{ severity: 4, because: 'live parts lie in the wet', when: answer('livePartsWet', true) }],
  },
  'condensate-line-fouled': {
    appliesWhen: is('condensateLine', true),
    proofs: breaches('CON-01', 'DPR-16'),
    also: breaches('CON-02', 'CON-04a', 'CON-04b', 'DPR-17a', 'DPR-17b'),
  },
  'soil-gas-exhaust-missing': {
    proofs: [
      beyond('radonBqPerM3', '>=', [148, '4 pCi/L', '148 Bq/m³'], cite('epaRadon', 'read')),
      breach('EXS-01'),
    ],
    hints: [breach('RAD-11')],
    worse: [
      {
        severity: 4,
        because: 'radon far above the action level',
        when: beyond('radonBqPerM3', '>=', [370, '10 pCi/L', '370 Bq/m³']),
      },
    ],
  },
  'exhaust-in-wrong-place': {
    appliesWhen: any(is('radonSystem', true)),
    proofs: breaches('RAD-14'),
    also: breaches('RAD-05b', 'RAD-05c', 'RAD-13a', 'RAD-13b'),
  },
  'dead-zones': { proofs: [beyond('humiditySpread', '>', [0.1, '10 points'])] },
  'humidistat-off': {
    appliesWhen: machine,
    proofs: [
      beyond('humidistatError', '>', [0.05, '5 points']),
      beyond('humidistatSetting', '>', [0.6, '60 %']),
      beyond('humidistatSetting', '<', [0.4, '40 %']),
    ],
    worse: [
      {
        severity: 2,
        because: 'set so high that mold can grow',
        when: beyond('humidistatSetting', '>', [0.6, '60 %']),
      },
    ],
  },
  'sweating-ducts': {
    appliesWhen: is('ductsInSpace', true),
    proofs: [
      beyond('ductSkinAboveDewPointK', '<=', [0, '0 K'], cite('dewPoint', 'computed')),
      answer('ductLeaksAir', true),
    ],
  },
  untended: {
    appliesWhen: all(machine),
    proofs: [beyond('filterServiceAgeMonths', '>', [24, '24 months'])],
    also: [
      beyond('coilServiceAgeMonths', '>', [24, '24 months']),
      beyond('condensateServiceAgeMonths', '>', [24, '24 months']),
    ],
    worse: [
      {
        severity: 3,
        because: 'the air is damp by now',
        when: beyond('airRelativeHumidityMean7Day', '>', [0.65, '65 %']),
      },
    ],
  },
};
