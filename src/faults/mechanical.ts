/** What is wrong to be seen, and what it brings about. Whether anybody looks is not known here. */
import type { Found } from '../site/part.ts';
import type { Fault, NextStep, Tell } from './fault.ts';
import {
  LOCK_OFF,
  PRACTICE,
  PUT_RIGHT,
  socketOnly,
  TELL_INSTALLER,
  TELL_MAKER,
  tetheredOnly,
} from './fault.ts';
import { withVisible } from './parts.ts';

interface Sight extends Pick<Fault, 'id' | 'title' | 'component' | 'where' | 'cause' | 'hazard'> {
  readonly seen: Found;
  readonly source?: string;
  readonly next: NextStep;
  readonly tell: readonly Tell[];
  readonly impossible?: NonNullable<Fault['impossible']>;
}

const sight = ({ seen, ...entry }: Sight): Fault => ({
  source: PRACTICE,
  ...entry,
  kind: 'fault',
  family: 'mechanical',
  parameters: [],
  change: (parts) => withVisible(parts, seen.where, seen.what),
});

export const mechanicalFaults: readonly Fault[] = [
  sight({
    id: 'gland-loose',
    title: 'Cable gland not tight',
    component: 'enclosure',
    where: 'the gland where the supply cable enters the unit',
    cause: 'It was never tightened, and the cable pulls at it.',
    hazard: 'Water gets in: shock and corrosion.',
    seen: { where: 'enclosure', what: 'the gland turns by hand, and there is a water mark below it' },
    source: 'BS 7671:2018+A2:2022 722.512.2',
    next: PUT_RIGHT,
    tell: TELL_INSTALLER,
  }),
  sight({
    id: 'enclosure-ip-low',
    title: 'Enclosure not fit for outdoors',
    component: 'enclosure',
    where: 'the enclosure',
    cause: 'An indoor unit was hung outside.',
    hazard: 'Water gets in: shock and corrosion.',
    seen: { where: 'enclosure', what: 'the plate says IP41, and it hangs in the rain' },
    source: 'BS 7671:2018+A2:2022 722.512.2: IP44 at least outdoors',
    next: LOCK_OFF,
    tell: TELL_INSTALLER,
  }),
  sight({
    id: 'connector-cracked',
    title: 'Connector cracked',
    component: 'outlet',
    where: 'the tether’s connector',
    cause: 'It was dropped and driven over.',
    hazard: 'Fingers reach what is live while charging.',
    seen: { where: 'outlet', what: 'the connector’s shell is cracked through, and a contact is burnt' },
    next: LOCK_OFF,
    tell: TELL_MAKER,
    impossible: tetheredOnly,
  }),
  sight({
    id: 'lid-spring-broken',
    title: 'Spring of the socket’s lid broken',
    component: 'enclosure',
    where: 'the socket-outlet’s lid',
    cause: 'It was forced.',
    hazard: 'Rain and fingers get in.',
    seen: { where: 'outlet', what: 'the lid hangs open by itself' },
    next: LOCK_OFF,
    tell: TELL_MAKER,
    impossible: socketOnly,
  }),
  sight({
    id: 'tether-strained',
    title: 'Tether hangs by its conductors',
    component: 'outlet',
    where: 'the tether’s entry into the unit',
    cause: 'The clamp of the strain relief is missing.',
    hazard: 'The protective conductor may be what parts first.',
    seen: { where: 'cable', what: 'the tether has no clamp and can be pulled out some way' },
    next: LOCK_OFF,
    tell: TELL_MAKER,
    impossible: tetheredOnly,
  }),
  sight({
    id: 'no-impact-guard',
    title: 'Nothing keeps vehicles off the unit',
    component: 'enclosure',
    where: 'the unit’s place beside the parking space',
    cause: 'The layout was changed, and the post was left out.',
    hazard: 'It is knocked over.',
    seen: {
      where: 'position',
      what: 'it stands at bumper height in line with the bay, with no post before it',
    },
    source: 'BS 7671:2018+A2:2022 722.512.2.203',
    next: PUT_RIGHT,
    tell: TELL_INSTALLER,
  }),
  sight({
    id: 'terminal-loose',
    title: 'Line terminal not tight',
    component: 'circuit',
    where: 'the unit’s supply terminals',
    cause: 'It was not tightened to its torque.',
    hazard: 'It heats under load, and may burn.',
    seen: { where: 'terminals', what: 'the line screw turns half round by hand, and the sleeve is browned' },
    next: PUT_RIGHT,
    tell: TELL_INSTALLER,
  }),
  sight({
    id: 'labels-missing',
    title: 'Labels missing',
    component: 'enclosure',
    where: 'the board',
    cause: 'Haste.',
    hazard: 'The wrong circuit is taken for isolated.',
    seen: {
      where: 'labels',
      what: 'the circuit is not in the schedule, and the six-monthly test notice is missing',
    },
    source: 'BS 7671:2018+A2:2022 514',
    next: PUT_RIGHT,
    tell: TELL_INSTALLER,
  }),
];
