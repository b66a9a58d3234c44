/** The unit's statechart is drawn as it is. */
import { readFileSync } from 'node:fs';
import { expect, test } from 'vitest';
import { chartPicture } from '../../src/cli/chartPicture.ts';
import { compiledChart } from '../../src/unit/chart/compiled.ts';

const DRAWN = readFileSync(new URL('../../src/unit/unitChart.md', import.meta.url), 'utf8');

test('src/unit/unitChart.md is up to date: npm run chart', () => {
  expect(chartPicture()).toBe(DRAWN);
});

test('every state and every way to another is on it', () => {
  const { nodes, innermost, takers } = compiledChart();
  const states = new Set(DRAWN.match(/state ".+" as \w+/g));
  // The chart as a whole, and the regions that have states of their own, are headings.
  const regions = nodes.find(({ isParallel }) => isParallel)?.children ?? [];
  const headings = regions.filter((region) => (nodes[region]?.children.length ?? 0) > 0);
  expect(states.size).toBe(nodes.length - 1 - headings.length);
  const always = innermost.flatMap((node) => node.always);
  const ways = new Set([
    ...always,
    ...[...takers.values()].flatMap((of) => of.flatMap((taker) => taker.ways)),
  ]);
  const arrows = DRAWN.match(/^ *\w+ --> \w+: /gm) ?? [];
  expect(arrows).toHaveLength([...ways].filter(({ way }) => way !== null).length);
});
