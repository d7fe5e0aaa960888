/** International foot, m; exact by definition. */
export const FOOT_M = 0.3048;
/** Avoirdupois pound, kg; exact by definition. */
export const POUND_KG = 0.45359237;
/** US gallon of 231 in³, L; exact by definition. */
export const GALLON_L = 3.785411784;
/** Standard gravity, m/s²; exact by definition. */
export const STANDARD_GRAVITY = 9.80665;
/** International Table British thermal unit, J; exact by definition. */
export const BTU_J = 1055.05585262;
