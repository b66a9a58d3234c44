// Looks over the page as it stands for what would keep somebody out: names, roles, contrast, size of targets.

import axe from 'axe-core';
import type { Page } from 'playwright-core';

interface Found {
  readonly id: string;
  readonly nodes: readonly {
    readonly html: string;
    readonly failureSummary?: string;
    readonly target: readonly string[];
  }[];
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
      axe: { run: (where: unknown, options: object) => Promise<{ violations: Found[] }> };
    };
    const { violations } = await axe.run(document, chosen);
    /** What a bar half covers is as large as it is where somebody scrolls it to. */
    const isSmall = async ({ target }: Found['nodes'][number]): Promise<boolean> => {
      const [from, to] = [scrollY, document.querySelector(target[0] ?? '')];
      to?.scrollIntoView({ block: 'center' });
      const again = await axe.run(to, { runOnly: { type: 'rule', values: ['target-size'] } });
      scrollTo(0, from);
      return again.violations.length > 0;
    };
    const found: Found[] = [];
    for (const { id, nodes } of violations) {
      const own: Found['nodes'][number][] = [];
      for (const node of nodes) if (id !== 'target-size' || (await isSmall(node))) own.push(node);
      found.push({ id, nodes: own });
    }
    return found;
  }, options);
  return violations.flatMap(({ id, nodes }) =>
    nodes.map(
      ({ html, failureSummary = '' }) =>
        `${id}: ${html.slice(0, 160)} ${failureSummary.replaceAll('\n', ' ')}`,
    ),
  );
}

/** The same in the light, and of colour in the dark: all else is alike there. */
export async function barriersInBothThemes(page: Page): Promise<readonly string[]> {
  await page.emulateMedia({ colorScheme: 'light' });
  const found = await barriersOn(page);
  await page.emulateMedia({ colorScheme: 'dark' });
  return [...found, ...(await barriersOn(page, 'colour'))];
}
