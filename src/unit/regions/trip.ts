/** A residual or d.c. trip that acts through the control: once tripped it waits for what the sheet names. */
import { byReset, byStateA, forget, keep, wasKept } from './clearing.ts';
import { unitSetup } from './setup.ts';

/** After a residual or d.c. trip nothing closes by itself, and a return of supply is no reset (IEC 61851-1:2017 clause 14, UK note). */
export const trip = (reason: 'residual' | 'direct') =>
  unitSetup.createStateConfig({
    initial: 'ready',
    states: {
      ready: {
        id: `${reason}-ready`,
        always: { guard: wasKept(reason), target: 'tripped' },
        on: { [`${reason} trip`]: 'tripped' },
      },
      tripped: {
        tags: `${reason} tripped`,
        entry: keep(reason),
        always: byStateA(reason, 'ready'),
        on: { button: byReset(reason, 'ready') },
        after: {
          'before closing after trip': {
            guard: 'closes after trip',
            target: 'ready',
            actions: forget(reason),
          },
        },
      },
    },
  });
