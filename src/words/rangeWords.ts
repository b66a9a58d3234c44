/** Readings as several tables write them: the expected one first, its range after. */
const ohms = (value: number): string => value.toFixed(value < 10 ? 2 : 1);

/** Below this an instrument of two digits after the point shows nothing, Ω. */
const NOTHING = 0.005;

/** What a loop or a conductor should read, Ω. A range that begins at nothing has its upper end alone. */
export function aboutOhms(about: number, least: number, greatest: number): string {
  const range = least < NOTHING ? `at most ${ohms(greatest)} Ω` : `${ohms(least)} to ${ohms(greatest)} Ω`;
  return `about ${about < NOTHING ? '0' : ohms(about)} Ω (${range})`;
}

/** What a live line shows at an outlet that should be dead. */
export const LIVE_LINE = 'about 230 V from a line to PE at the outlet';
