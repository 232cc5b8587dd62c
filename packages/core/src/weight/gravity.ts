/** Standard acceleration of free fall, exact by definition (ISO 80000-3) [m/s²]. */
export const gravityMS2 = 9.80665;
