import { number, yesNo } from '../quantity.ts';

/** Radon, soil-gas suction and its outlet. */
export const soilGasQuantities = {
  radonBqPerM3: number(
    'Radon in the lowest lived-in room',
    'Bq/m³',
    'house',
    [0, 1_000_000],
    'Run a test of at least 48 hours with windows shut; a long-term test tells more.',
  ),
  radonTestedSinceWork: yesNo(
    'Radon was tested after the space was changed',
    'papers',
    'Compare the date of the test with the date of the work.',
  ),
  radonTestAgeYears: number(
    'Age of the last radon test',
    'year',
    'papers',
    [0, 100],
    'Read the date of the report.',
  ),
  radonSystemInstalled: yesNo(
    'A soil-gas system is built in',
    'soil-gas',
    'Look for the riser from under the liner and follow it to its outlet.',
  ),
  radonVentsKeptOrMechanical: yesNo(
    'Foundation vents are kept, or an approved mechanical system replaces them',
    'vent',
    'Count the open vents, or read the approval of the system.',
  ),
  stackDiameterM: number(
    'Diameter of the vent stack',
    'm',
    'soil-gas',
    [0, 1],
    'Read the print on the pipe at its smallest place.',
  ),
  stackAboveRoofM: number(
    'Vent stack above the roof',
    'm',
    'soil-gas',
    [-20, 20],
    'Measure from the roof up to the end of the pipe.',
  ),
  stackToOpeningsM: number(
    'Vent stack end from openings less than 2 ft below it',
    'm',
    'soil-gas',
    [0, 200],
    'Tape from the end of the pipe to the nearest such window, door or intake.',
  ),
  suctionPipeLengthM: number(
    'Perforated suction pipe under the liner',
    'm',
    'soil-gas',
    [0, 200],
    'Tape it before it is covered, or read it from the as-built plan.',
  ),
  suctionTestPoints: number(
    'Pressure test points of a membrane, far from the inlet',
    'count',
    'soil-gas',
    [0, 100],
    'Count the capped test points of each separate sheet.',
  ),
  suctionUnderBothSheets: yesNo(
    'Suction reaches under both sheets',
    'soil-gas',
    'Read the pressure under each sheet with a micro-manometer.',
  ),
  filmPressureDifferencePa: number(
    'Pressure under the liner against the room, farthest point',
    'Pa',
    'soil-gas',
    [-500, 500],
    'Read a micro-manometer through the test point farthest from the inlet; negative is suction.',
  ),
  systemLabelLetterHeightM: number(
    'Letter height of the system label',
    'm',
    'soil-gas',
    [0, 1],
    'Measure the letters of the smallest line that tells what it is.',
  ),
  radonOutletAboveOpeningM: number(
    'Exhaust outlet above an opening under it',
    'm',
    'soil-gas',
    [-20, 50],
    'Measure from the top of the nearest operable opening up to the outlet.',
  ),
  radonOutletBesideOpeningM: number(
    'Exhaust outlet sideways from an opening',
    'm',
    'soil-gas',
    [0, 200],
    'Tape from the outlet to the nearest operable opening beside it.',
  ),
  radonFanWhereLeakStaysOut: yesNo(
    'Suction fan is outdoors, in an attic or in a garage with no room above',
    'soil-gas',
    'Follow the pipe to the fan; a fan in the crawl space or in a lived-in room is a no.',
  ),
} as const;
