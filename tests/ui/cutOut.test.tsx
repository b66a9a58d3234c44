// A place cut out of an opened unit: it lies within the cut, is ringed with its number, and the words are that side's.
import { renderToStaticMarkup } from 'react-dom/server';
import { describe, expect, test } from 'vitest';
import { differences } from '../../src/attempt/opened/differences.ts';
import { causesOf } from '../../src/attempt/opened/roots.ts';
import { lockstep, SIDES } from '../../src/attempt/opened/twin.ts';
import { CATALOGUE } from '../../src/faults/catalogue.ts';
import { papersOf } from '../../src/scenario/scenario.ts';
import { openedLayout, spotOf } from '../../src/ui/drawing/opened/layout.ts';
import { CUT, PlaceCutOut } from '../../src/ui/drawing/opened/PlaceCutOut.tsx';
import { valueText, whatText } from '../../src/words/differences.ts';
import { logOf } from '../attempt/logs.ts';
import { scenarioOn } from '../faults/installations.ts';
import { TELLS } from '../faults/tells.ts';

/** Plugged in and read from L1 to PE, on an installation with that fault. */
function cutOf(id: string, parameters: (typeof CATALOGUE)[number]['parameters']) {
  const values = Object.fromEntries(parameters.map(({ name, default: value }) => [name, value]));
  const scenario = scenarioOn((TELLS[id] as (typeof TELLS)[string])[0], [{ fault: id, values }]);
  const { steps, installations } = lockstep(
    scenario,
    logOf(null, [
      { op: 'vehicle', plugged: true, state: 'B' },
      { op: 'measure', quantity: 'voltage', tool: 'meter', between: ['outlet.L1', 'outlet.PE'] },
    ]),
  );
  const step = steps.at(-1);
  const [unit, twin] = [installations.unit.at(-1), installations.twin.at(-1)];
  if (step === undefined || unit === undefined || twin === undefined) throw new Error(id);
  const [difference] = differences(step.unit, step.twin, causesOf(unit, twin, scenario.faults));
  if (difference === undefined) throw new Error(`${id} differs in nothing`);
  return { papers: papersOf(scenario), step, difference };
}

const FAULTS = CATALOGUE.filter(({ kind, alter }) => kind === 'fault' && alter === undefined);

describe.each(FAULTS)('$id', ({ id, parameters }) => {
  const { papers, step, difference } = cutOf(id, parameters);
  const pageOf = (side: (typeof SIDES)[number]) =>
    renderToStaticMarkup(
      <PlaceCutOut
        name="Opened"
        papers={papers}
        side={side}
        moment={step[side]}
        operation={step.operation}
        difference={difference}
        number={7}
      />,
    );

  test('its place lies within the cut, ring and number with it', () => {
    const page = pageOf('unit');
    const [x = 0, y = 0, width = 0, height = 0] = (/viewBox="([^"]*)"/.exec(page)?.[1] ?? '')
      .split(' ')
      .map(Number);
    expect([width, height]).toEqual([CUT.width, CUT.height]);
    const layout = openedLayout(papers);
    const spot = spotOf(layout, difference.place);
    expect(spot).not.toBeNull();
    expect(spot?.x).toBeGreaterThan(x);
    expect(spot?.x).toBeLessThan(x + width);
    expect(spot?.y).toBeGreaterThan(y);
    expect(spot?.y).toBeLessThan(y + height);
    expect(page).toMatch(/class="ringed"/);
    expect(page).toMatch(/class="ring-number-text"[^>]*>7</);
  });

  test('the words are those of its own side, for those who do not see it too', () => {
    for (const side of SIDES) {
      const words = pageOf(side).replaceAll('&#x27;', '’').replaceAll('&gt;', '>').replaceAll('&lt;', '<');
      expect(words.split(`${whatText(difference.what)}: ${valueText(difference[side])}`)).toHaveLength(3);
    }
  });
});

test('what has no place on the drawing is told in words alone', () => {
  const [fault] = FAULTS;
  if (fault === undefined) throw new Error('no fault');
  const { papers, step } = cutOf(fault.id, fault.parameters);
  const page = renderToStaticMarkup(
    <PlaceCutOut
      name="Opened"
      papers={papers}
      side="unit"
      moment={step.unit}
      operation={null}
      difference={{
        place: 'heard',
        what: { id: 'heard' },
        unit: { id: 'sounds', heard: [] },
        twin: { id: 'sounds', heard: [{ what: 'contactor closed', after: 0.5 }] },
      }}
      number={1}
    />,
  );
  expect(page).not.toContain('<svg');
  expect(page).toContain('heard meanwhile: nothing');
});
