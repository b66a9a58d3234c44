/** Test action `instruments`: looked over, proved and nulled before anything rests on them. */
import { published } from '../sources.ts';
import { continuity, insulation } from '../steps.ts';
import type { Procedure } from '../testAction.ts';
import { equipmentTestVoltage } from './insulation.ts';

/** Both leads on one terminal: nothing but the leads themselves. */
export const TOGETHER = 'met';

export const instruments: Procedure = {
  id: 'instruments',
  stage: 'before power',
  from: 'energised',
  leaves: 'energised',
  restsOn: ['tester'],
  cover: 'as found',
  applies: () => true,
  steps: ({ sheet }) => [
    { op: 'null-leads' },
    { op: 'check-instruments', known: true },
    continuity(TOGETHER, TOGETHER),
    insulation(TOGETHER, TOGETHER, equipmentTestVoltage(sheet.insulationTestVoltageMax)),
  ],
  untold: () => [
    {
      id: 'dead',
      toldBy: ['prove-dead'],
      ownOnly: true,
      of: 'circuit',
      source: published('HSE GS38, 4th edition 2015'),
    },
  ],
};
