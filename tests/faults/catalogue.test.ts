/** The catalogue: what an entry is, what it may change, and what it may not. */
import { describe, expect, test } from 'vitest';
import {
  CATALOGUE,
  entryNamed,
  type FaultChoice,
  faultsAmong,
  toldOnSheet,
  withDefaults,
  withFaults,
} from '../../src/faults/catalogue.ts';
import { FAMILIES } from '../../src/faults/families.ts';
import type { CatalogueEntry } from '../../src/faults/fault.ts';
import { soundParts, withPart } from '../../src/faults/parts.ts';
import { designOf, SHEET, SITE } from '../bench/build.ts';

const sound = soundParts(SITE, designOf());
const asDefault = (entry: CatalogueEntry): FaultChoice => ({
  fault: entry.id,
  values: withDefaults(entry, {}),
});

test('ids are unique, tidy and found by name', () => {
  const ids = CATALOGUE.map(({ id }) => id);
  expect(new Set(ids).size).toBe(ids.length);
  for (const id of ids) {
    expect(id).toMatch(/^[a-z]+(-[a-z]+)*$/);
    expect(entryNamed(id)?.id).toBe(id);
  }
  expect(entryNamed('no-such-fault')).toBeUndefined();
});

test('the first seven faults and a not-fault', () => {
  const count = (kind: CatalogueEntry['kind']) => CATALOGUE.filter((entry) => entry.kind === kind).length;
  expect(count('fault')).toBeGreaterThanOrEqual(7);
  expect(count('not-fault')).toBeGreaterThanOrEqual(1);
});

describe.each(CATALOGUE.map((entry) => [entry.id, entry] as const))('%s', (_, entry) => {
  test('says what, where, why and for whom, and on what grounds', () => {
    for (const text of [entry.title, entry.where, entry.cause, entry.hazard, entry.source])
      expect(text.length).toBeGreaterThan(3);
    expect(Object.keys(FAMILIES)).toContain(entry.family);
    if (entry.kind === 'fault') expect(entry.tell.length).toBeGreaterThan(0);
  });

  test('has its defaults inside its ranges', () => {
    const outside = entry.parameters.filter(
      ({ min, max, default: usual }) => !(min < max && min <= usual && usual <= max),
    );
    expect(outside).toEqual([]);
  });

  test('changes something, and nothing of the site, the papers or what it was given', () => {
    const before = JSON.stringify(sound);
    const changed = withFaults(sound, [asDefault(entry)]);
    const sheet = toldOnSheet(SHEET, [asDefault(entry)]);
    expect(JSON.stringify(sound)).toBe(before);
    expect(changed.site).toBe(sound.site);
    expect(changed.design.sheet).toBe(sound.design.sheet);
    expect(changed.sources).toBe(sound.sources);
    expect(changed.oneWays).toBe(sound.oneWays);
    if (entry.kind === 'fault') {
      expect(JSON.stringify([changed, changed.design.directPickup === Infinity])).not.toBe(
        JSON.stringify([sound, false]),
      );
      expect(sheet).toEqual(SHEET);
    } else {
      expect(changed).toBe(sound);
      expect(sheet).not.toEqual(SHEET);
    }
  });
});

test('two faults together both act', () => {
  const both = withFaults(sound, [
    { fault: 'pe-joint', values: { ohms: 2 } },
    { fault: 'line-pe-insulation-low', values: { ohms: 50_000 } },
  ]);
  const ohms = (id: string) => both.parts.find((part) => part.id === id)?.resistance;
  expect(ohms('circuit.PE')).toBeCloseTo(2.05544, 6);
  expect(ohms('insulation.circuit.L1-PE')).toBe(50_000);
});

test('a not-fault is no fault', () => {
  const choices = CATALOGUE.map(asDefault);
  expect(faultsAmong(choices).every(({ kind }) => kind === 'fault')).toBe(true);
  expect(faultsAmong(choices)).toHaveLength(CATALOGUE.filter(({ kind }) => kind === 'fault').length);
});

test('what cannot be: a second line on one phase, a detector that is not there', () => {
  const impossible = (id: string, phases: 1 | 3, direct: 'monitoring' | null, values = {}) => {
    const entry = entryNamed(id);
    return entry?.kind === 'fault' ? (entry.impossible?.({ phases, direct }, values) ?? null) : undefined;
  };
  expect(impossible('line-pole-welded', 1, null, { line: 2 })).toContain('one line');
  expect(impossible('line-pole-welded', 3, null, { line: 2 })).toBeNull();
  expect(impossible('line-pole-welded', 3, null, { line: 1.5 })).toContain('1, 2 or 3');
  expect(impossible('direct-detector-dead', 1, null)).toContain('no d.c. detector');
  expect(impossible('direct-detector-dead', 1, 'monitoring')).toBeNull();
});

test('a slip in the catalogue, a part that is not there, is thrown', () => {
  expect(() => withPart(sound, 'no.such.part', (part) => part)).toThrow('no part "no.such.part"');
});
