/** Standard acceleration of gravity [m/s²]: ISO 80000-3. */
export const gravityMS2 = 9.80665;
