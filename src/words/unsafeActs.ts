/**
 * What each unsafe act is, and why it is one: what would meet a person, and what to do instead.
 * Sources: EAWR 1989 regs 4, 12–14; HSG85; GS38; BS 7671 643.1, 643.3.3; IEC 61851-1:2017 8.6.
 */
import type { UnsafeAct, UnsafeId } from '../bench/unsafe.ts';

interface UnsafeWords {
  /** Ends "unsafe: …"; no sentence. */
  readonly act: string;
  readonly why: string;
}

export const UNSAFE_ACT_WORDS: Readonly<Record<UnsafeId, UnsafeWords>> = {
  'insulation-live': {
    act: 'insulation test on a live circuit',
    why: 'Mains and the test voltage meet in a tester that is not made for it: an arc at the probes, or a shock. Prove dead first (EAWR reg. 14, GS38).',
  },
  'continuity-live': {
    act: 'continuity test on a live part',
    why: 'Mains drives a large current through the tester: its fuse opens, or an arc burns at the probes. Prove dead first (EAWR reg. 14, GS38).',
  },
  'cover-circuit-on': {
    act: 'cover opened with the circuit on',
    why: 'The terminals behind the cover are live. Every live reading can be taken with the cover on (EAWR reg. 14).',
  },
  'cover-without-lock': {
    act: 'cover opened with the isolation not locked',
    why: 'Somebody else can switch it on while you are at the terminals (EAWR regs 12 and 13).',
  },
  'conductor-not-proved-dead': {
    act: 'conductor handled that was not locked off, or not proved dead at its terminals',
    why: 'A conductor that is dead at the board may be live at the unit, and the other way round: through another way, a second source or a borrowed neutral. Lock it off, and prove it dead at the very terminals (EAWR regs 13 and 14, HSG85).',
  },
  'conductor-half-proved': {
    act: 'conductor handled on a detector that was proved before the test and not after it',
    why: 'The detector may have failed during the test, and a failed detector shows every live part as dead. Prove it again at once, before you touch anything (GS38).',
  },
  'earth-off-supply-on': {
    act: 'earthing conductor or electrode taken off with the main switch not locked off',
    why: 'The whole house stays supplied with no earth: a fault in any circuit puts mains voltage on every case and pipe, and on the two ends that you hold apart (EAWR reg. 8, Guidance Note 3).',
  },
  'energised-with-link': {
    act: 'energised with a temporary link in',
    why: 'The link shorts the line to the conductor at its other end. Hundreds of amperes flow at switch-on, with an arc where the link is weakest.',
  },
  'energised-cover-open': {
    act: 'energised with the cover open',
    why: 'Live terminals are within reach of fingers and tools. Every live reading can be taken with the cover on (EAWR reg. 14).',
  },
  'energised-earth-off': {
    act: 'energised with an earth off',
    why: 'With the earth off, a fault current has no way back and no device opens. Every exposed part could then stand at mains voltage (EAWR reg. 8).',
  },
  'energised-failed-test': {
    act: 'energised with a failed dead test standing',
    why: 'The dead test has found what power would make dangerous: a missing earth, a short circuit, bad insulation. Put it right and repeat the test before power (BS 7671 643.1; EAWR reg. 4).',
  },
  'loop-earth-open': {
    act: 'loop test with the protective conductor known open',
    why: 'The test current would put mains voltage on every part joined to that conductor.',
  },
  'residual-earth-open': {
    act: 'residual-current test with the protective conductor known open',
    why: 'The test current would put mains voltage on every part joined to that conductor.',
  },
  'proved-with-meter': {
    act: 'proved dead with a meter',
    why: 'A meter on a wrong range or with a broken lead shows nothing on a live part; only a proved two-pole detector proves dead (GS38).',
  },
  'detector-failed': {
    act: 'tested for dead with a detector that was dark on its proving unit',
    why: 'It shows every live part as dead. Whatever it showed since it last lit is not proved: replace it, and prove every place anew (GS38, HSG85).',
  },
  'detector-not-proved': {
    act: 'tested for dead with a detector that was not proved before and after',
    why: 'A detector with a flat battery or a broken lead shows nothing on a live part. Try it on a proving unit, test every pair, and try it again (GS38).',
  },
  'isolated-without-lock': {
    act: 'isolated without a lock',
    why: 'Somebody else can switch it on again (EAWR reg. 12, HSG85).',
  },
  'neutral-not-isolated': {
    act: 'isolated with the neutral left joined',
    why: 'With an earth of its own the neutral can stand at a voltage here: it is opened with the lines (BS 7671 461.2, from memory).',
  },
  'isolated-under-load': {
    act: 'isolated under load',
    why: 'End the charge first: an isolator that is not made to break a load can burn, and contacts wear (BS 7671 Table 537.4, from memory).',
  },
  'energised-unit-off': {
    act: 'energised with the unit’s conductors off',
    why: 'The bare ends of these conductors are live from the moment of switching on (EAWR reg. 14).',
  },
  'vehicle-left-plugged': {
    act: 'dead work with the vehicle plugged in',
    why: 'A vehicle is a source and a load of its own: unplug it before dead work, or it suffers the test and falsifies it (EAWR reg. 12(2)).',
  },
  'loop-earth-not-shown': {
    act: 'loop test before the protective conductor was shown to be continuous',
    why: 'Were it open, the test current would put mains voltage on the case and the vehicle: continuity comes first (BS 7671 643.1, 643.2).',
  },
  'residual-earth-not-shown': {
    act: 'residual-current test before the protective conductor was shown to be continuous',
    why: 'Were it open, the test current would put mains voltage on the case and the vehicle: continuity comes first (BS 7671 643.1, 643.2).',
  },
  'insulation-through-electronics': {
    act: 'insulation test from line to neutral through the electronics',
    why: 'The reading tells nothing and the electronics may suffer: join the lives and test them to earth, or take the unit’s conductors off (BS 7671 643.3.3).',
  },
  'insulation-over-sheet': {
    act: 'insulation test above the voltage that the unit’s sheet allows',
    why: 'The electronics may be damaged; 250 V or less is used with equipment connected (BS 7671 643.3.3).',
  },
  'insulation-on-pilot': {
    act: 'insulation test on the control pilot or proximity contact',
    why: 'These are extra-low-voltage circuits of the electronics and can be destroyed (IEC 61851-1:2017 8.6).',
  },
};

/** The act with its words, as the command line prints it. */
export const unsafeInWords = (unsafe: UnsafeAct): UnsafeAct & UnsafeWords => ({
  ...unsafe,
  ...UNSAFE_ACT_WORDS[unsafe.id],
});

/** A gate may be named that is no act: then its name. */
export const unsafeActText = (id: string): string =>
  Object.hasOwn(UNSAFE_ACT_WORDS, id) ? UNSAFE_ACT_WORDS[id as UnsafeId].act : id;
