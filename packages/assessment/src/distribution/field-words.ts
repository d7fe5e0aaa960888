import type { Origin } from '../origin.ts';
import type { DistributionWorkedOut } from './distribution-assessment.ts';
import type { PreparedField } from './prepare-field.ts';

/** Where mixing comes from that nobody read. */
export const USUAL_MIXING: Origin = {
  kind: 'assumption',
  note: 'still air between joists, piers and ducts; known to a factor of three, and readings at four places replace it',
};

/** The day of a field in the words of the assessment. */
export function dayOf({ day: { conditions }, model }: PreparedField): DistributionWorkedOut['day'] {
  const { title, outdoorC, outdoorHumidityRatio, crawlC, groundC, houseC, air } = conditions;
  return {
    title,
    outdoorC,
    outdoorHumidityRatio: outdoorHumidityRatio.value,
    crawlC: crawlC.value,
    groundC: groundC.value,
    houseC,
    airChangesPerHour: (3600 * air.fromOutdoorsM3PerS.value) / model.mesh.volumeM3,
  };
}
