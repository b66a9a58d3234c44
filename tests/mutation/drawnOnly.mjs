// A checker of Stryker's that lets through the mutants that were drawn, and no others.

import { readFileSync } from 'node:fs';
import { declareFactoryPlugin, PluginKind } from '@stryker-mutator/api/plugin';
import { placeOf } from './mutants.mjs';

function drawnOnly() {
  const drawn = new Set(JSON.parse(readFileSync(process.env.MUTANTS_DRAWN, 'utf8')));
  const checked = (mutant) =>
    drawn.has(placeOf(mutant)) ? { status: 'passed' } : { status: 'compileError', reason: 'not drawn' };
  return {
    init: async () => {},
    group: async (mutants) => [mutants.map(({ id }) => id)],
    check: async (mutants) => Object.fromEntries(mutants.map((mutant) => [mutant.id, checked(mutant)])),
  };
}
drawnOnly.inject = [];

export const strykerPlugins = [declareFactoryPlugin(PluginKind.Checker, 'drawn-only', drawnOnly)];
