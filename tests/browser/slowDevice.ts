/** A device so slow that what lasts a moment elsewhere can be met in the middle, on any machine. In Chromium. */
import type { Page } from 'playwright-core';

/** Resolves to what makes it quick again: a slow page keeps a core as busy as a quick one. */
export async function slowDevice(page: Page, times = 20): Promise<() => Promise<unknown>> {
  const session = await page.context().newCDPSession(page);
  const paced = (rate: number) => session.send('Emulation.setCPUThrottlingRate', { rate });
  await paced(times);
  return () => paced(1);
}
