/** The version of the calculations and their tables; every logged answer carries it. */
export const calculationVersion = '0.1.0';
