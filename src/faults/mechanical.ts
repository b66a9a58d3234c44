/** What is wrong to be seen, and what it brings about. Whether anybody looks is not known here. */
import type { Found } from '../site/part.ts';
import type { Fault, NextStep, Tell } from './fault.ts';
import {
  islandOnly,
  LOCK_OFF,
  PUT_RIGHT,
  socketOnly,
  TELL_INSTALLER,
  TELL_MAKER,
  tetheredOnly,
} from './fault.ts';
import { withVisible } from './parts.ts';

interface Sight extends Pick<Fault, 'id' | 'component'> {
  readonly seen: Found;
  readonly next: NextStep;
  readonly tell: readonly Tell[];
  readonly impossible?: NonNullable<Fault['impossible']>;
}

const sight = ({ seen, ...entry }: Sight): Fault => ({
  ...entry,
  kind: 'fault',
  family: 'mechanical',
  parameters: [],
  change: (parts) => withVisible(parts, seen.where, seen.what),
});

export const mechanicalFaults: readonly Fault[] = [
  sight({
    // BS 7671:2018+A2:2022 722.512.2.
    id: 'gland-loose',
    component: 'enclosure',
    seen: { where: 'enclosure', what: { id: 'gland-turns' } },
    next: PUT_RIGHT,
    tell: TELL_INSTALLER,
  }),
  sight({
    // BS 7671:2018+A2:2022 722.512.2: IP44 at least outdoors.
    id: 'enclosure-ip-low',
    component: 'enclosure',
    seen: { where: 'enclosure', what: { id: 'plate-says-ip41' } },
    next: LOCK_OFF,
    tell: TELL_INSTALLER,
  }),
  sight({
    // BS 7671:2018+A2:2022 642.2 (from memory): not visibly damaged.
    id: 'connector-cracked',
    component: 'outlet',
    seen: { where: 'outlet', what: { id: 'shell-cracked' } },
    next: LOCK_OFF,
    tell: TELL_MAKER,
    impossible: tetheredOnly,
  }),
  sight({
    // IEC 61851-1:2017 12.4: IP24 unmated outdoors.
    id: 'lid-spring-broken',
    component: 'enclosure',
    seen: { where: 'outlet', what: { id: 'lid-hangs-open' } },
    next: LOCK_OFF,
    tell: TELL_MAKER,
    impossible: socketOnly,
  }),
  sight({
    // BS 7671:2018+A2:2022 522.8.5 (from memory): no undue mechanical strain.
    id: 'tether-strained',
    component: 'outlet',
    seen: { where: 'cable', what: { id: 'tether-unclamped' } },
    next: LOCK_OFF,
    tell: TELL_MAKER,
    impossible: tetheredOnly,
  }),
  sight({
    // BS 7671:2018+A2:2022 722.512.2.203.
    id: 'no-impact-guard',
    component: 'enclosure',
    seen: {
      where: 'position',
      what: { id: 'nothing-before-it' },
    },
    next: PUT_RIGHT,
    tell: TELL_INSTALLER,
  }),
  sight({
    // BS 7671:2018+A2:2022 411.3.1.1; Part 2 (from memory): within arm’s reach, 2.5 m, counts as touched together.
    id: 'house-metal-within-reach',
    component: 'enclosure',
    seen: {
      where: 'position',
      what: { id: 'bonded-tap-in-reach' },
    },
    next: PUT_RIGHT,
    tell: TELL_INSTALLER,
    impossible: islandOnly,
  }),
  sight({
    // BS 7671:2018+A2:2022 526.1.
    id: 'terminal-loose',
    component: 'circuit',
    seen: { where: 'terminals', what: { id: 'screw-turns' } },
    next: PUT_RIGHT,
    tell: TELL_INSTALLER,
  }),
  sight({
    // BS 7671:2018+A2:2022 514.
    id: 'labels-missing',
    component: 'enclosure',
    seen: {
      where: 'labels',
      what: { id: 'not-in-schedule' },
    },
    next: PUT_RIGHT,
    tell: TELL_INSTALLER,
  }),
];
