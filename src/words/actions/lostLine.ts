/** Words of the test action `lost-line`. */
import type { ActionWords } from '../actionWords.ts';
import { str } from '../values.ts';

export const lostLine: ActionWords = {
  purpose: 'See what the unit does when a line fails, and that a unit without power keeps its outlet dead.',
  stops: {
    voltage: 'the outlet stays live with the unit’s electronics dead: isolate, and keep people away',
  },
  lines: {
    stops: {
      text: (v) => `switches every line off when a line other than ${str(v, 'line')} is lost`,
      why: 'This unit’s sheet says that it stops: a vehicle that counts on three lines is not to run on two. No standard asks for it.',
      otherwise: '230 V still on the lines that are left, 2 s after one was lost',
    },
    'goes-on': {
      text: (v) =>
        `goes on supplying the lines that are left when a line other than ${str(v, 'line')} is lost`,
      why: (v) =>
        `${str(v, 'line')} still feeds the electronics, so the contactor stays closed. This unit’s sheet says that it goes on, and no standard asks it to stop.`,
      otherwise: 'no voltage from a line that is left to neutral at the outlet',
    },
    'lost-line-live': {
      text: (v) => `has voltage from ${str(v, 'lost')} to PE at the outlet while ${str(v, 'lost')} is lost`,
      why: 'The lost line is open before the unit, so nothing feeds it. Voltage there comes from another line, through a crossed or a touching conductor.',
      otherwise: (v) => `about 230 V from ${str(v, 'lost')} to PE at the outlet`,
    },
    dark: {
      text: (v) => `has a dark display while ${str(v, 'line')} is lost`,
      why: (v) =>
        `${str(v, 'line')} feeds the unit’s electronics. A display that stays lit is fed by another line, so the lines are not where the papers say.`,
      otherwise: (v) => `a display that stays lit without ${str(v, 'line')}`,
    },
    'pilot-dead': {
      text: (v) => `brings the pilot to 0 V while ${str(v, 'line')} is lost (−1 to +1 V)`,
      why: 'The pilot’s source has no supply either (state E). The vehicle sees that and stops asking.',
      otherwise: 'some volts on the pilot, steady or oscillating',
    },
    voltage: {
      text: (v) => `leaves any line of the outlet live while ${str(v, 'line')} is lost`,
      why: 'With no supply the contactor’s coil lets go, and springs open its poles. A pole that stays closed keeps the outlet live with nothing watching the vehicle.',
      otherwise: 'about 230 V from a line to PE at the outlet, perhaps under a dark display',
    },
    recovers: {
      text: 'shows ready again once the line is back and the vehicle has gone',
      why: 'A lost line is the supply’s fault, so the unit latches none of its own. Once supplied it starts up afresh and waits for the next vehicle.',
      otherwise: 'a dark display, or a fault still shown, after the start-up time',
    },
    neutral: {
      text: 'stays undamaged when its neutral is lost',
      why: 'With a line lost, the others keep their 230 V to neutral. With the neutral lost these voltages drift apart, and one may come near 400 V.',
    },
  },
};
