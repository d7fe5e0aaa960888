import { number, yesNo } from '../quantity.ts';

/** What proves a defect and no criterion asks for. */
export const defectSignQuantities = {
  ventFillerLoose: yesNo(
    'What stops the vent is loose',
    'vent',
    'Push at the board or foam; look for light round it or a piece that fell out.',
  ),
  ventPanelShortOfR: yesNo(
    'Vent panel has less R-value than the wall asks for here',
    'vent',
    'Measure the thickness, read the R-value for it from the mark, and compare with the row of the climate zone.',
  ),
  rimAndFloorHolesM2: number(
    'Open holes in rim and floor, added up',
    'm²',
    'sill',
    [0, 100],
    'Measure the gap round each pipe, chase and open block top, and add the areas.',
  ),
  linerHoleCount: number(
    'Holes and tears in the liner',
    'count',
    'liner',
    [0, 100_000],
    'Count them while crawling the whole floor; patched ones do not count.',
  ),
  linerFoldHeightM: number(
    'Height of folds and ridges of the liner',
    'm',
    'liner',
    [0, 2],
    'Measure the highest fold that a knee or foot can catch.',
  ),
  dropletsUnderLiner: yesNo(
    'Droplets or fog under the liner',
    'liner',
    'Look through the sheet or lift an edge; nothing flows.',
  ),
  waterMovesUnderLiner: yesNo(
    'Free water moves under the liner',
    'floor',
    'Press a palm on the sheet and watch for a ripple.',
  ),
  waterLyingOnLiner: yesNo(
    'Water lies on the liner',
    'floor',
    'Look over the whole floor, the low spots first.',
  ),
  linerScrimWet: yesNo(
    'Threads at a cut edge of the liner have drawn in water',
    'liner',
    'Look along cut edges for dark threads; dry one and smell again.',
  ),
  organicsUnderLiner: yesNo(
    'Roots, litter or droppings lie under the liner',
    'ground',
    'Lift the sheet at several places and look.',
  ),
  plumbingLeakPresent: yesNo(
    'Water drips or runs from pipes or equipment',
    'space',
    'Shut all taps and watch the water meter, or follow the drip with dye.',
  ),
  wallDamp: yesNo(
    'Foundation wall is damp or wet inside',
    'wall',
    'Look for a dark band, white salts or beads; lay a hand on it.',
  ),
  drainBlockedFraction: number(
    'Share of the drain that is blocked',
    'fraction',
    'drain',
    [0, 1],
    'Compare what is flushed in with what runs out, or read it from a camera.',
  ),
  sumpCordDamaged: yesNo(
    'Cord at the sump lid is chafed or cut',
    'sump',
    'Look along the cord with the circuit switched off.',
  ),
  livePartsWet: yesNo(
    'Live electrical parts lie in the wet',
    'wiring',
    'Look from a dry place with the circuit switched off; do not touch.',
  ),
  dehumidifierRunShare: number(
    'Share of a week that the dehumidifier runs',
    'fraction',
    'dehumidifier',
    [0, 1],
    'Read the run hours twice, a week apart, or take it from a logger.',
  ),
  humidistatSetting: number(
    'Setting of the humidistat',
    'fraction',
    'dehumidifier',
    [0, 1],
    'Read the dial or display.',
  ),
  ductSkinAboveDewPointK: number(
    'Skin of a duct above the dew point of the air',
    'K',
    'duct',
    [-60, 60],
    'Read the skin by contact or infrared, the air beside it by hygrometer, and subtract the dew point.',
  ),
  ductLeaksAir: yesNo(
    'A duct blows air into the space or draws it in',
    'duct',
    'Hold a hand or smoke at joints and boots with the fan on.',
  ),
  pierCarriesWood: yesNo('Wood bears on the pier', 'pier', 'Look at what rests on the pier.'),
  bearingMoistureContent: number(
    'Moisture content of wood at its bearing: girder, sill or post',
    'fraction',
    'wood',
    [0, 3],
    'Drive the pins along the grain within a foot of the bearing, and correct the reading.',
  ),
  termiteOrBeetleSigns: yesNo(
    'Tubes, powder or exit holes of insects in wood',
    'wood',
    'Look along sills, piers and walls with a slanting light.',
  ),
  handoverFileComplete: yesNo(
    'Permit, data sheets, pictures and warranty are on file',
    'papers',
    'Go through the checklist of the handover file.',
  ),
} as const;
