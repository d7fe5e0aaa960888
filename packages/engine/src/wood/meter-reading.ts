/** What the meter has already done to the number on its display. */
export type MeterCorrects = 'nothing' | 'temperature' | 'temperature-and-species';

/** A pin reading with what is needed to correct it once, and only once. */
export interface MeterReading {
  /** Number on the display [fraction of oven-dry mass, 0.16 for 16 %], 0..3. */
  readonly reading: number;
  readonly meterCorrects: MeterCorrects;
  /** Wood temperature at the pins [°C], -40..80; null when nobody measured it. */
  readonly woodTemperatureC: number | null;
  /** Species key as in `meterSpecies`; any other key, or null when unknown, is left uncorrected with a notice. */
  readonly species: string | null;
  /**
   * Species that the scale stands for; default `douglas-fir`. A meter with a species setting has the scale of the
   * species it was set to.
   */
  readonly scaleSpecies?: string;
  /** Temperature the scale was made for [°C]; default 21.1 (70 °F). */
  readonly calibrationTemperatureC?: number;
  /** Waterborne preservative in the wood. */
  readonly preservativeTreated?: boolean;
  /** Lumber known to be kiln-dried at 82 °C or more. */
  readonly highTemperatureDried?: boolean;
}
