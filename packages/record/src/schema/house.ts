import * as z from 'zod';
import { Day, Fraction, Id, Label, Temperature, ThermalResistance, Words } from './scalars.ts';

/** What the job is and where. */
export const Header = z.strictObject({
  title: Label,
  client: Label.optional(),
  address: Words.optional(),
  latitudeDeg: z.number().min(-90).max(90).optional(),
  longitudeDeg: z.number().min(-180).max(180).optional(),
  elevationM: z.number().min(-500).max(6000).optional(),
  /** Id of a built-in climate station, when the nearest one is not the right one. */
  climateStation: Id.optional(),
  surveyedOn: Day.optional(),
  surveyedBy: z.array(Label).max(50).default([]),
  /** Why the contractor was called, in the owner's words. */
  complaint: Words.optional(),
  notes: Words.optional(),
});
export type Header = z.infer<typeof Header>;

/** Facts of the house above and around the space. An absent fact is unknown, never "no". */
export const House = z.strictObject({
  yearBuilt: z.int().min(1600).max(2200).optional(),
  stories: z.int().min(1).max(4).optional(),
  heatedVolumeM3: z.number().positive().max(20_000).optional(),
  /** `vented`: open to outdoors on purpose. `closed`: meant to be sealed from outdoors. */
  spaceType: z.enum(['vented', 'closed']).optional(),
  heatingSetC: Temperature.optional(),
  coolingSetC: Temperature.optional(),
  /** No cooling equipment: the house follows the weather in summer. */
  cooled: z.boolean().optional(),
  indoorRelativeHumidity: Fraction.optional(),
  /** Blower-door flow of the house at 50 Pa [m³/h]. */
  blowerDoorM3PerH50: z.number().min(0).max(100_000).optional(),
  /** Thermal resistance of the floor over the space [m²·K/W]. */
  floorInsulationRsi: ThermalResistance.optional(),
  floodZone: z.boolean().optional(),
  termiteZone: z.enum(['none', 'slight', 'moderate', 'very-heavy']).optional(),
  climateZone: z
    .string()
    .regex(/^[1-8][ABC]?$/, 'a climate zone like 4A')
    .optional(),
  /** Ids of local amendments that apply here. */
  amendments: z.array(Id).max(50).default([]),
  /** Electricity price [cents per kWh]. */
  electricityCentsPerKWh: z.number().min(0).max(1000).optional(),
  soil: z.enum(['sand', 'sandy-loam', 'loam', 'silt', 'clay-loam', 'clay', 'rock']).optional(),
  /** Exposure of the house to wind. */
  shelter: z.enum(['open', 'light', 'moderate', 'heavy', 'very-heavy']).optional(),
});
export type House = z.infer<typeof House>;
