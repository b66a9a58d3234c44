/** Writes down which faults may be drawn in jobs of one aim: `npm run aim-faults`. Takes some minutes. */
import { writeFileSync } from 'node:fs';
import { workOutAimFaults } from '../scenario/aimFaults.ts';

writeFileSync(
  new URL('../scenario/aimFaults.json', import.meta.url),
  `${JSON.stringify(workOutAimFaults(), null, 2)}\n`,
);
