/** A residual or d.c. trip that acts through the control: once tripped it waits for what the sheet names. */
import { byReset, byStateA } from './clearing.ts';
import { unitSetup } from './setup.ts';

/** After a residual or d.c. trip nothing closes by itself (IEC 61851-1:2017 clause 14, UK note). */
export const trip = (reason: 'residual' | 'direct') =>
  unitSetup.createStateConfig({
    initial: 'ready',
    states: {
      ready: { id: `${reason}-ready`, on: { [`${reason} trip`]: 'tripped' } },
      tripped: {
        tags: `${reason} tripped`,
        always: byStateA(reason, 'ready'),
        on: { button: byReset(reason, 'ready') },
        after: { 'before closing after trip': { guard: 'closes after trip', target: 'ready' } },
      },
    },
  });
