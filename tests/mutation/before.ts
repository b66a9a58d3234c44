// What stands before each test file of a mutant run.
import { configureGlobal } from 'fast-check';

// Properties are tried with the same inputs in every run, so that a mutant's fate is the same too.
configureGlobal({ seed: 1 });
