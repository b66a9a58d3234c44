/** A device so slow that what lasts a moment elsewhere can be met in the middle, on any machine. In Chromium. */
import type { Page } from 'playwright-core';

/** Resolves to what makes it quick again: a slow page keeps a core as busy as a quick one. */
export async function slowDevice(page: Page, times = 20): Promise<() => Promise<unknown>> {
  const session = await page.context().newCDPSession(page);
  const paced = (rate: number) => session.send('Emulation.setCPUThrottlingRate', { rate });
  await paced(times);
  return () => paced(1);
}

/**
 * How many times slower every page is that somebody opens, where it is asked for: CHARGE_TRAINER_SLOWER=6. A test that
 * looks before the page has answered fails so, which a quick machine would only tell now and then.
 */
const SLOWER = Number(process.env.CHARGE_TRAINER_SLOWER ?? 1);

export async function slowedAsAsked(page: Page): Promise<void> {
  if (SLOWER > 1 && page.context().browser()?.browserType().name() === 'chromium')
    await slowDevice(page, SLOWER);
}
