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

interface Sight extends Pick<Fault, 'id' | 'component'> {
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
    component: 'enclosure',
    seen: { where: 'enclosure', what: { id: 'gland-turns' } },
    source: 'BS 7671:2018+A2:2022 722.512.2',
    next: PUT_RIGHT,
    tell: TELL_INSTALLER,
  }),
  sight({
    id: 'enclosure-ip-low',
    component: 'enclosure',
    seen: { where: 'enclosure', what: { id: 'plate-says-ip41' } },
    source: 'BS 7671:2018+A2:2022 722.512.2: IP44 at least outdoors',
    next: LOCK_OFF,
    tell: TELL_INSTALLER,
  }),
  sight({
    id: 'connector-cracked',
    component: 'outlet',
    seen: { where: 'outlet', what: { id: 'shell-cracked' } },
    next: LOCK_OFF,
    tell: TELL_MAKER,
    impossible: tetheredOnly,
  }),
  sight({
    id: 'lid-spring-broken',
    component: 'enclosure',
    seen: { where: 'outlet', what: { id: 'lid-hangs-open' } },
    next: LOCK_OFF,
    tell: TELL_MAKER,
    impossible: socketOnly,
  }),
  sight({
    id: 'tether-strained',
    component: 'outlet',
    seen: { where: 'cable', what: { id: 'tether-unclamped' } },
    next: LOCK_OFF,
    tell: TELL_MAKER,
    impossible: tetheredOnly,
  }),
  sight({
    id: 'no-impact-guard',
    component: 'enclosure',
    seen: {
      where: 'position',
      what: { id: 'nothing-before-it' },
    },
    source: 'BS 7671:2018+A2:2022 722.512.2.203',
    next: PUT_RIGHT,
    tell: TELL_INSTALLER,
  }),
  sight({
    id: 'terminal-loose',
    component: 'circuit',
    seen: { where: 'terminals', what: { id: 'screw-turns' } },
    next: PUT_RIGHT,
    tell: TELL_INSTALLER,
  }),
  sight({
    id: 'labels-missing',
    component: 'enclosure',
    seen: {
      where: 'labels',
      what: { id: 'not-in-schedule' },
    },
    source: 'BS 7671:2018+A2:2022 514',
    next: PUT_RIGHT,
    tell: TELL_INSTALLER,
  }),
];
