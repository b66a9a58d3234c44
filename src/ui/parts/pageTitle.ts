/**
 * The title of every printed page, with page n of m, in the margins of the page: a style sheet made by the page itself,
 * since its text is that of what is printed.
 */
import { useEffect } from 'react';

export interface PageTitle {
  readonly first: string;
  readonly second: string;
}

/** What every print of a training says of itself. */
export const TRAINING_RECORD = 'Training record: no certificate, no evidence of competence on real equipment';

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
