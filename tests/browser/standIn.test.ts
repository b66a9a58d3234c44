// Load and leakage at the stand-in, and disturbances of the supply, set by figures on the page: what does not fit is said
// beside the field, what fits acts on the bench and stands in what is known.

import { expect, test, vi } from 'vitest';
import { openBuiltPage } from './builtPage.ts';
import { press } from './hands.ts';
import { act, actWith, answerAll, begin, choose, inHand, setUp, sitDown } from './trainee.ts';

const opened = openBuiltPage();
/** A slow machine under load gets the time it needs; nothing is measured by the clock. */
vi.setConfig({ testTimeout: 240_000 });

test('set with the set-up, changed while observing, and disturbed', async () => {
  const page = await sitDown(opened.browser, opened.url);
  await begin(page, 'Harbour Mews, house 4');
  await choose(page, 'Vehicle asks (C)');
  await setUp(page, { 'stand-in': 'B: connected, 2.74 kΩ', 'then wait, s': '3' });
  const fold = page.getByText(/^its CP, diode, PE, load and leakage/);
  await fold.click();
  const load = page.getByLabel(/^load on each line/);
  await load.fill('200');
  await page.getByText('0 to 80 A is expected.').waitFor();
  // What does not fit is not taken, folded away or not.
  await fold.click();
  expect(await page.getByRole('button', { name: 'Predict', exact: true }).isDisabled()).toBe(true);
  await fold.click();
  await page.getByText('0 to 80 A is expected.').waitFor();
  await load.fill('20');
  await page.getByLabel(/^leakage smooth d.c./).fill('−1,5');
  await answerAll(page);
  await page.getByRole('button', { name: /^fairly sure/ }).click();
  await page.getByRole('heading', { name: 'Measure' }).waitFor();
  await press(page.getByRole('button', { name: 'Unfold what is known' }));
  await page
    .getByRole('row', { name: /^stand-in/ })
    .getByText('load 20 A a line, leakage −1.5 mA d.c. from L1')
    .waitFor();
  await press(page.getByRole('button', { name: 'Back', exact: true }));

  await act(page, 'stand-in: state C: asks, 1.3 kΩ added');
  await actWith(page, 'wait', 'seconds', 3);
  // The prediction, the set-up's two operations, and two acts.
  const now = async (entries: number) => (await inHand(page, entries)).world.plant;
  const supplied = await now(5);
  expect(supplied.standIn).toMatchObject({ load: 20, leakage: { ac: 0, dc: -0.0015, line: 'L1' } });
  expect(supplied.contactor).toBe('closed');

  // Above any pick-up of a sound detector: it opens.
  await actWith(page, 'stand-in: leakage to PE', 'smooth d.c.', 9);
  await actWith(page, 'wait', 'seconds', 10);
  await page.getByText('heard: contactor opens').first().waitFor();
  await actWith(page, 'stand-in: load', 'load on each line', 0);
  await actWith(page, 'disturbance: neighbours’ load', 'neighbours on L2', 6);
  await act(page, 'disturbance: PEN conductor open');
  await press(page.getByRole('button', { name: 'Unfold what is known' }));
  await page.getByRole('row', { name: /^disturbance neighbours’ load 6 kW on L2/ }).waitFor();
  await page.getByRole('row', { name: /^disturbance PEN open/ }).waitFor();
  await press(page.getByRole('button', { name: 'Back', exact: true }));
  const { standIn, neighbours, pen } = await now(10);
  expect(standIn).toMatchObject({ load: 0, leakage: { ac: 0, dc: 0.009, line: 'L1' } });
  expect({ neighbours, pen }).toEqual({ neighbours: [{ line: 'L2', power: 6000 }], pen: 'open' });
  await press(page.getByRole('button', { name: 'Do…' }));
  await press(page.getByRole('button', { name: 'disturbance: supply voltage' }));
  await page.getByLabel(/^line to neutral/).fill('20');
  await page.getByText('180 to 280 V is expected.').waitFor();
  expect(await page.getByRole('button', { name: 'Do it', exact: true }).isDisabled()).toBe(true);
  await press(page.getByRole('button', { name: 'Back to the readings' }));
  await act(page, 'disturbance over: supply as it was');
  const after = await now(11);
  await press(page.getByRole('button', { name: 'Unfold what is known' }));
  expect(await page.getByRole('row', { name: /^disturbance/ }).count()).toBe(0);
  expect({ neighbours: after.neighbours, pen: after.pen }).toEqual({ neighbours: [], pen: 'sound' });
});
