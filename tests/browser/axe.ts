// Looks over the page as it stands for what would keep somebody out: names, roles, contrast, size of targets.

import axe from 'axe-core';
import type { Page } from 'playwright-core';

interface Found {
  readonly id: string;
  readonly nodes: readonly { readonly html: string; readonly failureSummary?: string }[];
}

/** What a change of light to dark alone can break. */
const OF_COLOUR = ['color-contrast', 'link-in-text-block'] as const;

/** Every barrier found, one line each; none is as it should be. Of colour alone where all else was looked at before. */
export async function barriersOn(page: Page, looking: 'whole' | 'colour' = 'whole'): Promise<string[]> {
  if (await page.evaluate(() => !('axe' in globalThis))) await page.evaluate(axe.source);
  // What a press leads to is drawn in slices: it is looked at once the page has nothing more to do.
  await page.evaluate(
    () =>
      new Promise<void>((resolve) =>
        requestAnimationFrame(() => requestIdleCallback(() => resolve(), { timeout: 1000 })),
      ),
  );
  const options = {
    resultTypes: ['violations'],
    ...(looking === 'whole'
      ? { rules: { 'target-size': { enabled: true } } }
      : { runOnly: { type: 'rule', values: OF_COLOUR } }),
  };
  const violations: readonly Found[] = await page.evaluate(async (chosen) => {
    const { axe } = globalThis as unknown as {
      axe: { run: (options: object) => Promise<{ violations: Found[] }> };
    };
    const { violations } = await axe.run(chosen);
    return violations.map(({ id, nodes }) => ({
      id,
      nodes: nodes.map(({ html, failureSummary }) => ({ html, failureSummary: failureSummary ?? '' })),
    }));
  }, options);
  return violations.flatMap(({ id, nodes }) =>
    nodes.map(
      ({ html, failureSummary = '' }) =>
        `${id}: ${html.slice(0, 160)} ${failureSummary.replaceAll('\n', ' ')}`,
    ),
  );
}
