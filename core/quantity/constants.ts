/**
 * Defining constants of the units used here. All are exact by definition.
 *
 * Sources: NIST SP 811 (2008) appendix B (inch, pound, standard gravity,
 * standard atmosphere); SI Brochure 9th edition (zero Celsius).
 */

/** Metres in one international inch. */
export const METRES_PER_INCH = 0.0254;
/** Kilograms in one avoirdupois pound. */
export const KILOGRAMS_PER_POUND = 0.45359237;
/** Standard acceleration of free fall, m/s². */
export const STANDARD_GRAVITY = 9.80665;
/** Newtons in one pound-force. */
export const NEWTONS_PER_POUND_FORCE = KILOGRAMS_PER_POUND * STANDARD_GRAVITY;
/** Pascals in one pound-force per square inch. */
export const PASCALS_PER_PSI = NEWTONS_PER_POUND_FORCE / METRES_PER_INCH ** 2;
/** Pascals in one bar. */
export const PASCALS_PER_BAR = 100_000;
/** Pascals in one standard atmosphere. */
export const PASCALS_PER_STANDARD_ATMOSPHERE = 101_325;
/** Zero degrees Celsius, K. */
export const ZERO_CELSIUS = 273.15;
