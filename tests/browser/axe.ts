// Looks over the page as it stands for what would keep somebody out: names, roles, contrast, size of targets.

import axe from 'axe-core';
import type { Page } from 'playwright-core';

interface Found {
  readonly id: string;
  readonly nodes: readonly { readonly html: string; readonly failureSummary?: string }[];
}

/** Every barrier found, one line each; none is as it should be. */
export async function barriersOn(page: Page): Promise<string[]> {
  await page.evaluate(axe.source);
  const violations: readonly Found[] = await page.evaluate(async () => {
    const { axe } = globalThis as unknown as {
      axe: { run: (options: object) => Promise<{ violations: Found[] }> };
    };
    const { violations } = await axe.run({ rules: { 'target-size': { enabled: true } } });
    return violations.map(({ id, nodes }) => ({
      id,
      nodes: nodes.map(({ html, failureSummary }) => ({ html, failureSummary: failureSummary ?? '' })),
    }));
  });
  return violations.flatMap(({ id, nodes }) =>
    nodes.map(
      ({ html, failureSummary = '' }) =>
        `${id}: ${html.slice(0, 160)} ${failureSummary.replaceAll('\n', ' ')}`,
    ),
  );
}
