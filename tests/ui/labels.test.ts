// The labels of a group as they are typed: one a line or with commas between, each once, and what cannot be one is said.

import { expect, test } from 'vitest';
import { labelsIn } from '../../src/ui/screens/give/labels.ts';

test('lines, commas and semicolons part labels; the same label written otherwise is one', () => {
  expect(labelsIn(' ash-01\nelm-02, fir-04;;\n\n Ash-01 ')).toEqual({
    listed: ['Ash-01', 'elm-02', 'fir-04'],
    error: null,
  });
});

test('one that no attempt could have is left out and said', () => {
  const { listed, error } = labelsIn(`ash-01\n${'x'.repeat(61)}`);
  expect(listed).toEqual(['ash-01']);
  expect(error).toContain('longer than a label may be (60 characters)');
});

test('more than are dealt out to are said, with how many they are', () => {
  const many = Array.from({ length: 3000 }, (_, i) => `a${i}`).join('\n');
  expect(labelsIn(many).error).toMatch(/^At most \d+ labels are dealt out to; these are 3000\.$/);
});
