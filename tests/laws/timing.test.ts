/** Every permitted time, against the row it stands in. */

import { expect, test } from 'vitest';
import * as timing from '../../src/laws/timing.ts';

const rows: readonly { name: string; seconds: number; source: string }[] = [
  { name: 'GREATEST_UNLOCK_AFTER_UNPLUGGING', seconds: 5, source: 'Table A.6, 2.1' },
  { name: 'GREATEST_OFF_AFTER_UNPLUGGING', seconds: 0.1, source: 'Table A.6, 2.2' },
  { name: 'GREATEST_VEHICLE_OPEN_AFTER_UNPLUGGING', seconds: 3, source: 'Table A.6, 2.2' },
  { name: 'GREATEST_ON_AFTER_READY', seconds: 3, source: 'Table A.6, 3.2 and 4' },
  { name: 'GREATEST_VENTILATION', seconds: 3, source: 'Table A.6, 4' },
  { name: 'GREATEST_DUTY_CHANGE', seconds: 10, source: 'Table A.6, 6' },
  { name: 'GREATEST_VEHICLE_FOLLOW', seconds: 5, source: 'Table A.6, 6' },
  { name: 'GREATEST_OFF_AFTER_NOT_READY', seconds: 0.1, source: 'Table A.6, 8.1 and 8.2' },
  { name: 'GREATEST_VEHICLE_STOP', seconds: 3, source: 'Table A.6, 9.1' },
  { name: 'LEAST_OSCILLATION_PAUSE', seconds: 3, source: 'Table A.6, 9.2' },
  { name: 'LEAST_OPEN_UNDER_LOAD', seconds: 6, source: 'Table A.6, 10.2' },
  { name: 'GREATEST_OFF_AFTER_FAULT', seconds: 3, source: 'Table A.6, 12' },
  { name: 'GREATEST_UNLOCK_AFTER_FAULT', seconds: 30, source: 'Table A.6, 12' },
  { name: 'GREATEST_OFF_AFTER_EARTH_LOSS', seconds: 0.1, source: '6.3.1.2 and A.4.8' },
  { name: 'GREATEST_OFF_AFTER_PILOT_SHORT', seconds: 3, source: '6.3.1.2 and A.4.9' },
  { name: 'LEAST_STATE_F', seconds: 0.3, source: 'A.3, after Table A.5' },
  { name: 'GREATEST_OFF_AFTER_PROXIMITY_LOSS', seconds: 0.1, source: 'chosen, from memory' },
];

const times = new Map<string, number>(Object.entries(timing));

test.each(rows)('$name: $seconds s (IEC 61851-1:2017, $source)', ({ name, seconds }) => {
  expect(times.get(name)).toBe(seconds);
});

test('no time is left without a row', () => {
  expect(rows.map((row) => row.name).sort()).toEqual([...times.keys()].sort());
});
