// Physical constants, each with its source, and what rounding may do. Derived values are computed from these, never retyped.

/** @source icao-7488, table A: values adopted for the ICAO standard atmosphere. */
export const seaLevelTemperatureKelvin = 288.15;
/** @source icao-7488, table A. */
export const seaLevelPressureHectopascals = 1013.25;
/** @source icao-7488, table A: standard acceleration of free fall, m/s2. */
export const standardGravity = 9.80665;
/** @source icao-7488, table A: specific gas constant of dry air, J/(kg K). */
export const gasConstantDryAir = 287.05287;
/** @source icao-7488, table A: ratio of specific heats of air. */
export const heatCapacityRatio = 1.4;
/** @source icao-7488, table D: the troposphere's fall of temperature, kelvin per geopotential metre. */
export const troposphereLapseKelvinPerMetre = 0.0065;
/** @source icao-7488, table D: geopotential height of the tropopause, metres. */
export const tropopauseMetres = 11000;
/** @source icao-7488, table D: top of the isothermal layer, metres. */
export const isothermalTopMetres = 20000;

/** Quantities closer than this part of their size are equal: only binary rounding can set them apart. */
export const roundingShare = 1e-9;
