/** What each cause of this kind is, where it sits, how it comes about, who is at risk and how it shows. */
import type { CauseWords } from '../causeWords.ts';

export const controlFaults: Readonly<Record<string, CauseWords>> = {
  'diode-not-checked': {
    where: 'the control logic: it never looks at the pilot’s negative peak',
    cause: 'The check is switched off in the unit’s settings or programme.',
    hazard:
      'Water or a finger between pilot and PE conducts both ways, as a vehicle with a shorted diode does. The unit takes it for a vehicle that asks, and makes the outlet live.',
    tells:
      'With a sound vehicle everything is right. Short the stand-in’s diode and ask (C): the negative peak is pulled down, and the outlet still goes live. A sound unit refuses.',
  },
  'short-not-acted-on': {
    where: 'the control logic: it counts a pilot near 0 V as a request (C)',
    cause: 'There is a mistake in the unit’s programme.',
    hazard:
      'A crushed cable can short the pilot. The outlet stays live though nothing shows any more that a vehicle and its PE are there.',
    tells:
      'Short the pilot to PE while supplying: the pilot reads 0 V and the outlet stays live. Check how it opens when the vehicle stops asking (C to B): if that is in time, the contactor is sound and the rule for a short is missing.',
  },
  'ventilation-not-asked': {
    where: 'the control logic: it takes state D for state C',
    cause: 'A setting is wrong.',
    hazard:
      'Such a battery gives off gas as it charges. Indoors, with no ventilation, the gas gathers and can explode.',
    tells:
      'Ask for ventilation (D): the pilot reads about 3 V, as it should, and the outlet goes live. The sheet’s line “ventilation” says none, so a sound unit refuses.',
  },
  'pilot-acted-on-late': {
    where: 'the filter on the pilot, in the control logic',
    cause: 'The filter was made too heavy, to keep noise out.',
    hazard: 'The outlet stays live while a driver pulls the plug, or after the vehicle has lost its PE.',
    tells:
      'The filter delays what the unit sees of the pilot, so the outlet goes dead late when the vehicle stops asking (C to B). An emergency stop does not pass through the filter: if that is quick, the contactor is sound and the filter is slow.',
  },
  'supplies-in-b': {
    where: 'the voltage of the pilot below which the unit sees a request (C)',
    cause: 'The resistors that divide the pilot for the unit’s reading have drifted.',
    hazard: 'The connector is live in connected (B), where the driver may pull it out at any moment.',
    tells:
      'In connected (B) the pilot reads 9 V, as it should, and the outlet is live. Unplug: the outlet goes dead, so no pole is welded; a welded pole stays live with nothing plugged in.',
  },
  'misses-request': {
    where: 'the voltage of the pilot below which the unit sees a request (C)',
    cause: 'The resistors that divide the pilot for the unit’s reading have drifted.',
    hazard: 'None to people: the contactor never closes, so the vehicle does not charge.',
    tells:
      'The vehicle asks (C): the pilot reads 6 V and oscillates, as it should, but no contactor clicks and the outlet stays dead. With a pole stuck open you would hear the click; with permission missing the pilot would be steady.',
  },
  'offer-too-high': {
    where: 'the width of the pilot’s positive half (the duty)',
    cause: 'The duty was set wrongly when the unit was calibrated.',
    hazard: 'The vehicle draws all that it is offered. Cable or circuit overheats, or a fuse blows.',
    tells:
      'The duty reads too high in connected (B), such as 63 % where 53 % is due, and too high by the same points at every limit. A unit that ignores the cable’s coding is wrong with small cables only.',
  },
  'offer-too-low': {
    where: 'the width of the pilot’s positive half (the duty)',
    cause: 'The duty was set wrongly when the unit was calibrated.',
    hazard: 'None to people: the vehicle charges slowly.',
    tells:
      'The duty reads too low, such as 43 % where 53 % is due. Look at the sheet: a lower set current, a load limit or a small cable would explain it, and nothing there does.',
  },
  'limit-ignored': {
    where: 'the link between the site’s load management and the unit',
    cause: 'The data wire is off, or load management answers late.',
    hazard:
      'The vehicle goes on drawing the old current on top of the other loads. The main fuse carries the sum and blows.',
    tells:
      'Lower the site’s limit: 10 s later the duty still stands for the old current. With a wrong calibration the duty is wrong in connected (B) already, before any limit changes.',
  },
  'service-sensor-reversed': {
    where: 'the current sensor on the incoming line, at the board',
    cause: 'It was clipped on facing the wrong way, so it counts import as export.',
    hazard:
      'The unit counts the house’s loads as spare current and offers all of its own. The main fuse carries the sum and blows.',
    tells:
      'Switch on a known load beside the unit: the duty does not fall. A limit set by hand is still followed, so the fault lies at the sensor. A sensor on the wrong conductor shows the same; only a look at the sensor tells the two apart.',
  },
  'service-sensor-misplaced': {
    where: 'the current sensor: it sits round the unit’s own circuit, not round the incoming line',
    cause: 'There was more room for it on that conductor.',
    hazard:
      'The house’s current does not flow through the sensor, so the unit offers all of its own. The main fuse carries the sum and blows.',
    tells:
      'Switch on a known load beside the unit: its current misses the sensor, and the duty does not fall. A limit set by hand is still followed. A sensor the wrong way round shows the same; only a look at the sensor tells the two apart.',
  },
  'service-sensor-past-parting': {
    where:
      'the current sensor: it sits on the tail of this board, past the point where the next point’s tails part',
    cause:
      'The sensor was clipped on where it was easy to reach, or the next point was added later, ahead of it.',
    hazard:
      'The next point’s current does not flow through the sensor, so the unit counts it as spare. With both cars charging the service carries the sum for hours, and its fuse blows.',
    tells:
      'Let the next point charge: the duty does not fall, though a known load on this board lowers it. A sensor the wrong way round does not answer the known load either.',
  },
  'service-limit-set-high': {
    where: 'the setting of the unit that says what the service may carry',
    cause: 'The setting was left as it came, or somebody took the next larger fuse for this one.',
    hazard:
      'The unit follows the other loads, and stops too high. The service carries more than its rating for hours, and its fuse blows.',
    tells:
      'Switch on a known load beside the unit: the duty falls, and is too high by the same current at every load. A sensor the wrong way round or on another conductor does not answer at all.',
  },
  'restarts-at-once': {
    where: 'the control logic, after the pilot has gone steady',
    cause: 'The pause of at least 3 s was left out of the programme.',
    hazard:
      'The vehicle is still letting go of the old charge. The contactor closes under load, and its contacts burn.',
    tells:
      'Stop the charge and reset at once: the unit supplies again in less than 3 s. Watch what starts it: this unit waits for the reset, and only its pause is too short.',
  },
};
