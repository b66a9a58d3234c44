/**
 * The title block on every printed page: job, rules, bench time, record, and that it is no certificate, with page n of
 * m, in the margins of the page. A style sheet made by the page itself, since its text is this attempt's.
 */
import { useEffect } from 'react';
import type { Debrief } from '../../../attempt/marks/debrief.ts';
import { headOf } from '../../../attempt/record/attempt.ts';
import { benchTime } from '../../../words/benchTime.ts';
import { editionNamed } from '../../../words/sources.ts';

export interface PageTitle {
  readonly first: string;
  readonly second: string;
}

export function pageTitleOf({ run }: Debrief): PageTitle {
  const { scenario, attempt, times } = run;
  const trainee = attempt.trainee === undefined ? '' : `${attempt.trainee} · `;
  return {
    first: `${trainee}${scenario.title} · ${editionNamed(scenario.rules)} · bench time ${benchTime(times.at(-1) ?? 0)} · record ${headOf(attempt).toUpperCase()}`,
    second: 'Training record: no certificate, no evidence of competence on real equipment',
  };
}

/** A CSS string: nothing in it can end it. */
const quoted = (text: string): string =>
  `"${text.replace(/[\\"\n\r]/g, (one) => (one === '\\' || one === '"' ? `\\${one}` : ' '))}"`;

export const pageRules = ({ first, second }: PageTitle): string => `
@page {
  margin: 15mm 15mm 22mm;
  @bottom-left {
    content: ${quoted(first)} "\\A" ${quoted(second)};
    white-space: pre-line;
    font: 8pt system-ui, sans-serif;
    text-align: left;
    vertical-align: top;
    padding-top: 2mm;
    width: 145mm;
    border-top: 0.75pt solid #000;
  }
  @bottom-right {
    content: "page " counter(page) " of " counter(pages);
    font: 8pt system-ui, sans-serif;
    text-align: right;
    vertical-align: top;
    padding-top: 2mm;
    border-top: 0.75pt solid #000;
  }
}`;

export function usePageTitle(title: PageTitle): void {
  useEffect(() => {
    const sheet = new CSSStyleSheet();
    sheet.replaceSync(pageRules(title));
    document.adoptedStyleSheets = [...document.adoptedStyleSheets, sheet];
    return () => {
      document.adoptedStyleSheets = document.adoptedStyleSheets.filter((other) => other !== sheet);
    };
  }, [title]);
}
