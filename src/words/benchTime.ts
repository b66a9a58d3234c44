/** Bench time as minutes and seconds; nothing happens before it begins. */
export function benchTime(seconds: number): string {
  const whole = Math.floor(Math.max(0, seconds));
  return `${String(Math.floor(whole / 60)).padStart(2, '0')}:${String(whole % 60).padStart(2, '0')}`;
}
