/** The pilot's state as the unit accepts it, A to F, with debounce. */
import { assign, not } from 'xstate';
import type { PilotBand } from '../sensed.ts';
import { PILOT_BANDS } from '../sensed.ts';
import { type UnitTag, unitSetup } from './setup.ts';

const LEVEL_TAGS: Partial<Record<PilotBand, UnitTag[]>> = {
  B: ['vehicle'],
  C: ['vehicle', 'asking'],
  D: ['vehicle', 'asking'],
};

/** A band is accepted once it has stood for the debounce; a new candidate starts it afresh, a repeated one does not. */
const levelState = (band: PilotBand) =>
  unitSetup.createStateConfig({
    id: `level-${band}`,
    tags: LEVEL_TAGS[band] ?? [],
    initial: 'held',
    states: {
      held: { always: { guard: not({ type: 'sees band', params: { band } }), target: 'leaving' } },
      leaving: {
        entry: assign({ candidate: ({ context }) => context.sensed.pilot }),
        always: [
          { guard: { type: 'sees band', params: { band } }, target: 'held' },
          { guard: 'candidate changed', target: 'leaving', reenter: true },
        ],
        after: {
          debounce: PILOT_BANDS.filter((next) => next !== band).map((next) => ({
            guard: { type: 'candidate is' as const, params: { band: next } },
            target: `#level-${next}`,
          })),
        },
      },
    },
  });

export const level = unitSetup.createStateConfig({
  initial: 'A',
  states: Object.fromEntries(PILOT_BANDS.map((band) => [band, levelState(band)])),
});
