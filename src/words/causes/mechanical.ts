/** What each cause of this kind is, where it sits, how it comes about and who is at risk. */
import type { CauseWords } from '../causeWords.ts';

export const mechanical: Readonly<Record<string, CauseWords>> = {
  'gland-loose': {
    title: 'Cable gland not tight',
    where: 'the gland where the supply cable enters the unit',
    cause: 'It was never tightened, and the cable pulls at it.',
    hazard: 'Water gets in: shock and corrosion.',
  },
  'enclosure-ip-low': {
    title: 'Enclosure not fit for outdoors',
    where: 'the enclosure',
    cause: 'An indoor unit was hung outside.',
    hazard: 'Water gets in: shock and corrosion.',
  },
  'connector-cracked': {
    title: 'Connector cracked',
    where: 'the tether’s connector',
    cause: 'It was dropped and driven over.',
    hazard: 'Fingers reach what is live while charging.',
  },
  'lid-spring-broken': {
    title: 'Spring of the socket’s lid broken',
    where: 'the socket-outlet’s lid',
    cause: 'It was forced.',
    hazard: 'Rain and fingers get in.',
  },
  'tether-strained': {
    title: 'Tether hangs by its conductors',
    where: 'the tether’s entry into the unit',
    cause: 'The clamp of the strain relief is missing.',
    hazard: 'The protective conductor may be what parts first.',
  },
  'no-impact-guard': {
    title: 'Nothing keeps vehicles off the unit',
    where: 'the unit’s place beside the parking space',
    cause: 'The layout was changed, and the post was left out.',
    hazard: 'It is knocked over.',
  },
  'terminal-loose': {
    title: 'Line terminal not tight',
    where: 'the unit’s supply terminals',
    cause: 'It was not tightened to its torque.',
    hazard: 'It heats under load, and may burn.',
  },
  'labels-missing': {
    title: 'Labels missing',
    where: 'the board',
    cause: 'Haste.',
    hazard: 'The wrong circuit is taken for isolated.',
  },
};
