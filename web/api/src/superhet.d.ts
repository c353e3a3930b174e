/** What an expression comes to. */
export interface Answer {
  /** The quantity's name. */
  name: string;
  /** The value in the SI unit. */
  value: number;
  /** Symbol of the SI unit; empty for a fraction, a ratio or a whole number. */
  unit: "Hz" | "m" | "H" | "F" | "ohm" | "V" | "W" | "dB" | "";
  /** The value as the trade writes it, at most seven significant digits. */
  text: string;
}

/**
 * Works out a quantity of the catalogue, such as
 * `compute("oscillator", { dial: "1200 kHz", if: "470 kHz", side: "above" })`.
 *
 * Values are typed as on the pages, with their unit; whole numbers, ratios and fractions
 * may also be numbers. Every parameter must be given. `cargo site calc --list` lists the
 * quantities with their parameters.
 *
 * Throws an `Error` whose message says what was refused, the rule and the value.
 */
export function compute(
  name: string,
  parameters: Readonly<Record<string, string | number>>,
): Answer;
