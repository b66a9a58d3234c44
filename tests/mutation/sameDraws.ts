// Properties are tried with the same inputs in every run, so that a mutant's fate is the same too.
import { configureGlobal } from 'fast-check';

configureGlobal({ seed: 1 });
