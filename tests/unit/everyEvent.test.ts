/**
 * Every named state of the main regions against every event: where it goes, and that nothing happens everywhere else.
 * An event is given 25 ms, one debounce of 20 ms and a little; longer delays are in timing.test.ts.
 */
import { describe, expect, test } from 'vitest';
import type { PilotBand } from '../../src/unit/sensed.ts';
import { PILOT_BANDS } from '../../src/unit/sensed.ts';
import { charging, plugIn, type Rig, rig, running } from './harness.ts';

const SETTLE = 25;

const EVENTS: Readonly<Record<string, (unit: Rig) => void>> = {
  'power off': (u) => u.power(false),
  'power on': (u) => u.power(true),
  ...Object.fromEntries(PILOT_BANDS.map((pilot) => [`pilot ${pilot}`, (u: Rig) => u.sense({ pilot })])),
  'low half wrong': (u) => u.sense({ lowHalf: 'wrong' }),
  'low half sound': (u) => u.sense({ lowHalf: 'sound' }),
  'supply low': (u) => u.sense({ supply: 'low' }),
  'supply high': (u) => u.sense({ supply: 'high' }),
  'supply within': (u) => u.sense({ supply: 'within' }),
  'line missing': (u) => u.sense({ missing: ['L1'] }),
  'another line missing': (u) => u.sense({ missing: ['L2'] }),
  'line back': (u) => u.sense({ missing: [] }),
  'linked contact closed': (u) => u.sense({ linkedContact: 'closed' }),
  'linked contact open': (u) => u.sense({ linkedContact: 'open' }),
  'plug held': (u) => u.sense({ plug: 'held' }),
  'residual trip': (u) => u.trip('residual'),
  'direct trip': (u) => u.trip('direct'),
  authorise: (u) => u.press('authorise'),
  'override-delay': (u) => u.press('override-delay'),
  reset: (u) => u.press('reset'),
  stop: (u) => u.press('stop'),
  emergency: (u) => u.press('emergency'),
  'PEN outside': (u) => u.sense({ pen: 'outside' }),
  'PEN within': (u) => u.sense({ pen: 'within' }),
  'limit of 10 A': (u) => u.sense({ limit: 10 }),
  'no limit': (u) => u.sense({ limit: null }),
  'peak begins': (u) => u.sense({ peak: true }),
  'peak ends': (u) => u.sense({ peak: false }),
  'plug not felt': (u) => u.sense({ proximity: 'none' }),
  'over its code': (u) => u.sense({ overCode: true }),
  'within its code': (u) => u.sense({ overCode: false }),
};
type Moves = Readonly<Record<string, string>>;

interface Row {
  readonly region: string;
  readonly state: string;
  readonly reach: () => Rig;
  /** Where events lead; any not named leaves the state as it is. */
  readonly moves: Moves;
}

const FREE = { follows: false } as const;
const to = (target: string, ...events: readonly string[]): Moves =>
  Object.fromEntries(events.map((event) => [event, target]));
const pilots = (...bands: readonly PilotBand[]) => bands.map((band) => `pilot ${band}`);
const NO_SUPPLY = ['supply low', 'supply high', 'line missing', 'another line missing'];
const TRIPS = ['residual trip', 'direct trip'];
const STOPS = ['stop', 'emergency'];

const inB = (...how: Parameters<typeof running>): Rig => {
  const unit = running(...how);
  plugIn(unit);
  return unit;
};
const after = (unit: Rig, ...steps: readonly ((unit: Rig) => void)[]): Rig => {
  for (const step of steps) step(unit);
  return unit;
};
const wait = (ms: number) => (unit: Rig) => unit.pass(ms);
const event = (name: string) => EVENTS[name] as (unit: Rig) => void;
const closing = () => after(inB({}, FREE), event('pilot C'), wait(600));
const closed = () => after(closing(), event('linked contact closed'));
/** No delay before the first offer, and half of the longest from then on. */
const NO_FIRST_DELAY = { delayShare: (_: number, again: number) => (again === 0 ? 0 : 0.5) } as const;
const socketCharging = () => charging({ outlet: 'socket' });
const unpermitted = { permission: 'held' } as const;

const ROWS: readonly Row[] = [
  { region: '', state: 'unpowered', reach: () => rig(), moves: to('powered.starting', 'power on') },
  {
    region: '',
    state: 'powered.starting',
    reach: () => after(rig(), event('power on')),
    moves: to('unpowered', 'power off'),
  },

  {
    region: 'supply',
    state: 'within',
    reach: () => running(),
    moves: {
      ...to('outside', 'supply low', 'supply high'),
      ...to('missing', 'line missing', 'another line missing'),
    },
  },
  // A sheet that says so: only the electronics' own line counts.
  {
    region: 'supply',
    state: 'within',
    reach: () => running({ lostLine: 'goes-on' }),
    moves: { ...to('outside', 'supply low', 'supply high'), ...to('missing', 'line missing') },
  },
  {
    region: 'supply',
    state: 'outside',
    reach: () => after(running(), event('supply low')),
    moves: to('within', 'supply within'),
  },
  {
    region: 'supply',
    state: 'missing',
    reach: () => after(running(), event('line missing')),
    moves: to('within', 'line back'),
  },

  ...PILOT_BANDS.map(
    (band): Row => ({
      region: 'level',
      state: `${band}.held`,
      reach: () => after(running(), event(`pilot ${band}`), wait(SETTLE)),
      moves: Object.fromEntries(
        PILOT_BANDS.filter((x) => x !== band).map((x) => [`pilot ${x}`, `${x}.held`]),
      ),
    }),
  ),

  {
    region: 'permission',
    state: 'idle',
    reach: () => running(),
    moves: to('allowed.before', ...pilots('B', 'C', 'D')),
  },
  { region: 'permission', state: 'allowed.before', reach: () => inB(), moves: to('idle', 'pilot A') },
  // A charge that runs into its peak hours pauses (SI 2021/1467 reg. 10).
  {
    region: 'permission',
    state: 'allowed.before',
    reach: () => inB({ schedule: 'default-hours' }),
    moves: { ...to('idle', 'pilot A'), ...to('offHours', 'peak begins') },
  },
  {
    region: 'permission',
    state: 'allowed.supplied',
    reach: () => charging({ schedule: 'default-hours' }),
    moves: {
      ...to('idle', 'pilot A'),
      ...to('allowed.paused', 'pilot B'),
      ...to('offHours', 'peak begins'),
    },
  },
  {
    region: 'permission',
    state: 'allowed.supplied',
    reach: () =>
      charging(
        { schedule: 'default-hours', hoursEnd: 'delayed', startDelay: 600 },
        { design: NO_FIRST_DELAY },
      ),
    moves: {
      ...to('idle', 'pilot A'),
      ...to('allowed.paused', 'pilot B'),
      ...to('allowed.ending', 'peak begins'),
    },
  },
  {
    region: 'permission',
    state: 'allowed.ending',
    reach: () =>
      after(
        charging(
          { schedule: 'default-hours', hoursEnd: 'delayed', startDelay: 600 },
          { design: NO_FIRST_DELAY },
        ),
        event('peak begins'),
      ),
    moves: {
      ...to('idle', 'pilot A'),
      ...to('offHours', ...pilots('B', 'E', 'invalid', 'F')),
      ...to('allowed.supplied', 'peak ends', 'override-delay'),
    },
  },
  // Asked again, supply would start again: the delay is due anew (SI 2021/1467 reg. 11).
  {
    region: 'permission',
    state: 'allowed.paused',
    reach: () =>
      after(charging({ startDelay: 600 }, { design: NO_FIRST_DELAY }), event('pilot B'), wait(SETTLE)),
    moves: { ...to('idle', 'pilot A'), ...to('delayed', ...pilots('C', 'D')) },
  },
  {
    region: 'permission',
    state: 'allowed.paused',
    reach: () => after(charging(), event('pilot B'), wait(SETTLE)),
    moves: { ...to('idle', 'pilot A'), ...to('allowed.before', ...pilots('C', 'D')) },
  },
  {
    region: 'permission',
    state: 'idle',
    reach: () => after(running({ permission: 'authorise', authoriseBefore: true }), event('authorise')),
    moves: to('allowed.before', ...pilots('B', 'C', 'D')),
  },
  {
    region: 'permission',
    state: 'idle',
    reach: () => after(running({ permission: 'authorise' }), event('authorise')),
    moves: to('notAuthorised', ...pilots('B', 'C', 'D')),
  },
  { region: 'permission', state: 'held', reach: () => inB(unpermitted), moves: to('idle', 'pilot A') },
  {
    region: 'permission',
    state: 'notAuthorised',
    reach: () => inB({ permission: 'authorise' }),
    moves: { ...to('idle', 'pilot A'), ...to('allowed.before', 'authorise') },
  },
  {
    region: 'permission',
    state: 'delayed',
    reach: () => inB({ startDelay: 600 }),
    moves: { ...to('idle', 'pilot A'), ...to('allowed.before', 'override-delay') },
  },

  { region: 'oscillation', state: 'off', reach: () => running(), moves: to('on', ...pilots('B', 'C', 'D')) },
  {
    region: 'oscillation',
    state: 'on',
    reach: () => inB(),
    moves: {
      ...to('off', 'pilot A'),
      ...to('pausing', ...pilots('E', 'invalid', 'F'), ...NO_SUPPLY, ...TRIPS, ...STOPS),
      ...to('pausing', 'linked contact closed'),
    },
  },
  {
    region: 'oscillation',
    state: 'pausing',
    reach: () => after(inB(), event('residual trip')),
    moves: to('off', 'pilot A'),
  },

  {
    region: 'retention',
    state: 'free',
    reach: () => running({ outlet: 'socket' }, FREE),
    moves: to('engaging', ...pilots('B', 'C', 'D')),
  },
  {
    region: 'retention',
    state: 'engaging',
    reach: () => inB({ outlet: 'socket' }, FREE),
    moves: {
      ...to('held', 'plug held'),
      ...to('free', ...pilots('A', 'E', 'invalid', 'F'), ...TRIPS, 'emergency', 'linked contact closed'),
    },
  },
  {
    region: 'retention',
    state: 'held',
    reach: () => after(inB({ outlet: 'socket' }, FREE), event('plug held')),
    moves: to('free', ...pilots('A', 'E', 'invalid'), ...TRIPS, 'emergency'),
  },
  {
    region: 'retention',
    state: 'jammed',
    reach: () => after(inB({ outlet: 'socket' }, FREE), wait(3000)),
    moves: to('free', 'pilot A'),
  },

  {
    region: 'contactor',
    state: 'open',
    reach: () => inB({}, FREE),
    moves: { ...to('checking', 'pilot C'), ...to('failedToOpen', 'linked contact closed') },
  },
  {
    region: 'contactor',
    state: 'checking',
    reach: () => after(inB({}, FREE), event('pilot C'), wait(100)),
    // Nothing closes onto an open PEN, not even in the time that it may ignore (BS 7671 722.411.4.1).
    moves: to(
      'open',
      ...pilots('A', 'B', 'D', 'E', 'invalid', 'F'),
      ...NO_SUPPLY,
      ...TRIPS,
      ...STOPS,
      'PEN outside',
    ),
  },
  {
    region: 'contactor',
    state: 'closing',
    reach: closing,
    moves: {
      ...to('closed', 'linked contact closed'),
      ...to(
        'open',
        ...pilots('A', 'B', 'D', 'E', 'invalid', 'F'),
        ...NO_SUPPLY,
        ...TRIPS,
        ...STOPS,
        'PEN outside',
      ),
    },
  },
  {
    region: 'contactor',
    state: 'closed',
    reach: closed,
    moves: {
      ...to('opening', ...pilots('A', 'B', 'D', 'E', 'invalid', 'F'), ...NO_SUPPLY, ...TRIPS, 'emergency'),
      // The vehicle has its time to stop drawing (IEC 61851-1:2017 Table A.6, 9.1 and 10.2).
      ...to('draining', 'stop'),
      ...to('failedToClose', 'linked contact open'),
    },
  },
  {
    region: 'contactor',
    state: 'opening',
    reach: () => after(closed(), event('pilot B'), wait(SETTLE)),
    moves: to('open', 'linked contact open'),
  },
  {
    region: 'contactor',
    state: 'failedToOpen',
    reach: () => after(closed(), event('pilot B'), wait(600)),
    moves: to('open', 'linked contact open'),
  },
  {
    region: 'contactor',
    state: 'failedToClose',
    reach: () => after(closing(), wait(600)),
    moves: to('open', 'reset'),
  },

  {
    region: 'contactor',
    state: 'draining',
    reach: () => after(closed(), event('stop')),
    moves: {
      ...to('opening', ...pilots('A', 'B', 'D', 'E', 'invalid', 'F'), ...NO_SUPPLY, ...TRIPS, 'emergency'),
    },
  },

  {
    region: 'stopping',
    state: 'none',
    reach: () => inB(),
    moves: { stop: 'stopped', emergency: 'emergency' },
  },
  {
    region: 'stopping',
    state: 'stopped',
    reach: () => after(inB(), event('stop')),
    moves: { ...to('none', 'pilot A'), emergency: 'emergency' },
  },
  {
    region: 'stopping',
    state: 'emergency',
    reach: () => after(inB(), event('emergency')),
    moves: to('none', 'reset'),
  },

  { region: 'openPen', state: 'watching', reach: () => inB(), moves: to('timing', 'PEN outside') },
  {
    region: 'openPen',
    state: 'timing',
    reach: () => after(inB(), event('PEN outside'), wait(4000)),
    moves: to('watching', 'PEN within'),
  },
  {
    region: 'openPen',
    state: 'lockedOut.hazard',
    reach: () => after(inB(), event('PEN outside'), wait(4400)),
    moves: to('lockedOut.over', 'PEN within'),
  },
  {
    region: 'openPen',
    state: 'lockedOut.over',
    reach: () => after(inB(), event('PEN outside'), wait(4400), event('PEN within')),
    moves: { ...to('lockedOut.hazard', 'PEN outside'), ...to('watching', 'reset') },
  },

  { region: 'curtailment', state: 'following', reach: () => inB(), moves: to('changing', 'limit of 10 A') },
  {
    region: 'curtailment',
    state: 'changing',
    reach: () => after(inB(), event('limit of 10 A'), wait(1000)),
    moves: to('following', 'no limit'),
  },
  {
    region: 'curtailment',
    state: 'waiting',
    reach: () => after(inB(), event('limit of 10 A'), wait(2100)),
    moves: {},
  },

  {
    region: 'permission',
    state: 'offHours',
    reach: () => after(running({ schedule: 'default-hours' }), event('peak begins'), plugIn),
    moves: { ...to('idle', 'pilot A'), ...to('allowed.before', 'override-delay', 'peak ends') },
  },

  {
    region: 'overCode',
    state: 'within',
    reach: () => socketCharging(),
    moves: to('over', 'over its code'),
  },
  {
    region: 'overCode',
    state: 'over',
    reach: () => after(socketCharging(), event('over its code'), wait(4900)),
    moves: to('within', 'within its code'),
  },
  {
    region: 'overCode',
    state: 'cut',
    reach: () => after(socketCharging(), event('over its code'), wait(5000), event('within its code')),
    moves: to('within', 'pilot A'),
  },
  // A plug that is no longer felt, while supplying: opened at once (IEC 61851-1:2017 Annex B).
  {
    region: 'contactor',
    state: 'closed',
    reach: () => socketCharging(),
    moves: {
      ...to(
        'open',
        ...pilots('A', 'B', 'D', 'E', 'invalid', 'F'),
        ...NO_SUPPLY,
        ...TRIPS,
        'emergency',
        'plug not felt',
      ),
      ...to('draining', 'stop'),
      ...to('failedToClose', 'linked contact open'),
    },
  },

  { region: 'residual', state: 'ready', reach: () => inB(), moves: to('tripped', 'residual trip') },
  {
    region: 'residual',
    state: 'tripped',
    reach: () => after(inB(), event('residual trip')),
    moves: to('ready', 'reset'),
  },
  { region: 'direct', state: 'ready', reach: () => inB(), moves: to('tripped', 'direct trip') },
  {
    region: 'direct',
    state: 'tripped',
    reach: () => after(inB(), event('direct trip')),
    moves: to('ready', 'reset'),
  },

  {
    region: 'supervision',
    state: 'clear.quiet',
    reach: () => inB({}, FREE),
    moves: {
      ...to('latched.E', ...pilots('E', 'invalid')),
      ...to('latched.F.shown', 'linked contact closed'),
    },
  },
  {
    region: 'supervision',
    state: 'clear.suspicious',
    reach: () => after(inB({}, FREE), event('pilot C'), wait(100), event('low half wrong')),
    moves: {
      // With the offer withdrawn there is no low half to look at.
      ...to('clear.quiet', 'low half sound', ...pilots('A', 'B', 'F'), ...NO_SUPPLY, ...TRIPS, ...STOPS),
      ...to('latched.E', ...pilots('E', 'invalid')),
    },
  },
  {
    region: 'supervision',
    state: 'latched.E',
    reach: () => after(inB(), event('pilot E'), wait(SETTLE)),
    moves: to('clear.quiet', 'pilot A'),
  },
  {
    region: 'supervision',
    state: 'latched.diode',
    reach: () =>
      after(inB({}, FREE), event('pilot C'), event('low half wrong'), wait(300), (u) =>
        u.sense({ lowHalf: 'none' }),
      ),
    moves: to('clear.quiet', 'reset'),
  },
  {
    region: 'supervision',
    state: 'latched.F.shown',
    reach: () => after(closing(), wait(600)),
    moves: {},
  },
  {
    region: 'supervision',
    state: 'latched.F.over',
    reach: () => after(closing(), wait(1000)),
    moves: to('clear.quiet', 'reset'),
  },
];

/** The state of a region, or of the whole unit where it does not run. */
const stateIn = (unit: Rig, region: string): string => {
  const states = unit.states();
  if (states.length === 1) return states[0] as string;
  return states.find((state) => state.startsWith(`${region}.`))?.slice(region.length + 1) ?? 'none';
};

describe.each(ROWS)('$region $state', ({ region, state, reach, moves }) => {
  test('is reached', () => {
    expect(stateIn(reach(), region)).toBe(state);
  });

  test.each(Object.keys(EVENTS))('%s', (name) => {
    const unit = reach();
    event(name)(unit);
    unit.pass(SETTLE);
    const next = region !== '' && name === 'power off' ? 'unpowered' : (moves[name] ?? state);
    expect(stateIn(unit, region)).toBe(next);
  });
});

test('a charging unit drives its coil until something stands against it', () => {
  const unit = charging();
  expect(unit.commands()).toMatchObject({ coil: true, pilot: 'oscillating', indicator: 'charging' });
});
