/** Whom a line is about: a correct one beforehand, this one afterwards. */

/** Of what a correct one does. */
export const SUBJECT_WORDS = {
  unit: 'a correct unit',
  circuit: 'a sound circuit',
  tester: 'a sound tester',
} as const;
/** Of what this one did: with a line's text a plain statement. */
export const OWN_WORDS = { unit: 'The unit', circuit: 'The circuit', tester: 'The tester' } as const;
