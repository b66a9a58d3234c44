/** IEC 61851-1:2017 Table A.10 on the bench: the pilot at the outlet at every corner of the permitted parts. */
import { expect, test } from 'vitest';
import { CORNER_ROWS } from '../references/pilotTables.ts';
import { exact, PILOT } from './checkValues/row.ts';
import { withVehicle } from './otherVehicle.ts';

/** A vehicle without any resistor is as good as this. */
const NOTHING = 1e9;

test.each(CORNER_ROWS)('state $state, $end: $volts V ($source)', (row) => {
  const { state, open, sourceResistance, vehicleResistance, diodeDrop, volts } = row;
  const world = withVehicle({
    ohms: Math.min(vehicleResistance, NOTHING),
    drop: diodeDrop,
    open,
    source: sourceResistance,
  });
  const { high = 0, low = 0, frequency } = exact(world, PILOT);
  // To the hundredth that is shown.
  expect(Math.abs(high - volts)).toBeLessThanOrEqual(0.0101);
  expect(world.indicator).toBe({ A: 'ready', B: 'connected', C: 'charging', D: 'preparing' }[state]);
  // Wherever it oscillates a sound diode leaves the low half as it comes from the source: −12.6 to −11.4 V.
  if (state === 'A') expect(frequency).toBeNull();
  else expect(low).toBeCloseTo(-open, 2);
});
