import { expect, test } from 'vitest';
import { speciesCorrection } from '../../src/wood/meter-species.ts';

/**
 * A fit of moisture content against resistance for Douglas-fir, MC % = 10^(2.99 - 2.113 log10(log10 ohm)), recalled
 * from Straube, Onysko and Schumacher (2002). Douglas-fir resistances [MΩ] as tabulated, 7..25 % MC, from memory.
 */
const fit = (megohm: number) => 10 ** (2.99 - 2.113 * Math.log10(Math.log10(megohm * 1e6)));
const DOUGLAS_FIR = [
  22400, 4780, 1660, 630, 265, 120, 60, 33, 18.6, 11.2, 7.1, 4.6, 3.09, 2.14, 1.51, 1.1, 0.79, 0.6, 0.46,
];
const WHITE_OAK_AT = { 12: 80, 16: 7.2, 20: 1.15 } as const;

test('two recalled routes to the Douglas-fir row agree within 0.25 % MC', () => {
  DOUGLAS_FIR.forEach((megohm, i) => {
    expect(Math.abs(fit(megohm) - (7 + i))).toBeLessThan(0.25);
  });
});

test.each(Object.entries(WHITE_OAK_AT))(
  'white oak at %s percent MC: the fit of its resistance leads back to it',
  (mc, megohm) => {
    const reading = fit(megohm) / 100;
    const correction = speciesCorrection('douglas-fir', 'white-oak', reading);
    const change = correction.kind === 'corrected' ? correction.change : Number.NaN;
    // The fit's own 0.25 % MC, stretched by the slope between the two rows.
    expect(Math.abs(100 * (reading + change) - Number(mc))).toBeLessThan(0.3);
  },
);
