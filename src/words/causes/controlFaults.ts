/** What each cause of this kind is, where it sits, how it comes about and who is at risk. */
import type { CauseWords } from '../causeWords.ts';

export const controlFaults: Readonly<Record<string, CauseWords>> = {
  'diode-not-checked': {
    title: 'Vehicle’s diode not checked before supplying',
    where: 'the control logic: the low half of the pilot is not looked at',
    cause: 'The rule is switched off in the unit’s settings or programme.',
    hazard: 'Anything resistive between pilot and PE, water or a finger, can call for supply.',
  },
  'short-not-acted-on': {
    title: 'A shorted pilot is taken for a request',
    where: 'the control logic: a pilot near 0 V counts as a request',
    cause: 'A fault of its programme.',
    hazard: 'It supplies with nothing to show that PE is there.',
  },
  'ventilation-not-asked': {
    title: 'Supplies a vehicle that asks for ventilation, where there is none',
    where: 'the control logic: state D is taken for state C',
    cause: 'A wrong setting.',
    hazard: 'Gas from an old battery gathers indoors.',
  },
  'pilot-acted-on-late': {
    title: 'Changes of the pilot are acted on too late',
    where: 'the filter on the pilot in the control logic',
    cause: 'A filter made too heavy against noise.',
    hazard: 'A vehicle is live while it is unplugged, or stays live with its earth lost.',
  },
  'supplies-in-b': {
    title: 'Supplies a vehicle that has not asked',
    where: 'the level of the pilot below which the unit takes it for a request',
    cause: 'The divider that reads the pilot has drifted.',
    hazard: 'The connector is live with no request.',
  },
  'misses-request': {
    title: 'Does not notice that the vehicle asks',
    where: 'the level of the pilot below which the unit takes it for a request',
    cause: 'The divider that reads the pilot has drifted.',
    hazard: 'None to people: no charge.',
  },
  'offer-too-high': {
    title: 'Offers more current than it should',
    where: 'the width of the pilot’s high half',
    cause: 'A fault of calibration.',
    hazard: 'Vehicle, cable or circuit carries more than it is made for.',
  },
  'offer-too-low': {
    title: 'Offers less current than it should',
    where: 'the width of the pilot’s high half',
    cause: 'A fault of calibration.',
    hazard: 'None to people: a slow charge.',
  },
  'limit-ignored': {
    title: 'Does not follow the site’s limit in time',
    where: 'between the site’s load management and the unit',
    cause: 'The bus wire is off, or answers late.',
    hazard: 'The main fuse blows.',
  },
  'service-sensor-reversed': {
    title: 'The sensor on the service is the wrong way round',
    where: 'the current sensor on the incoming line, at the board',
    cause: 'It was clipped on facing the wrong way, and import is taken for export.',
    hazard: 'The main fuse blows.',
  },
  'service-sensor-misplaced': {
    title: 'The sensor on the service is on the wrong conductor',
    where: 'the current sensor: round the unit’s own circuit, not the incoming line',
    cause: 'There was more room for it there.',
    hazard: 'The main fuse blows.',
  },
  'restarts-at-once': {
    title: 'Offers again too soon after it withdrew its offer',
    where: 'the control logic, after the pilot has gone steady',
    cause: 'The pause was left out of its programme.',
    hazard: 'The vehicle is still letting go: contactors open and close under load.',
  },
};
