/** What an address that is none is answered with, by the worker without a network and by `npm start`. */

/** A whole page of plain text, without scripts or styles. `start`: the path at which the trainer begins, as an address has it. */
export const noSuchPage = (start: string): string => `<!doctype html>
<html lang="en-GB">
  <head>
    <meta charset="utf-8">
    <meta http-equiv="Content-Security-Policy" content="default-src 'none'; base-uri 'none'; form-action 'none'">
    <meta name="viewport" content="width=device-width, initial-scale=1">
    <meta name="color-scheme" content="light dark">
    <title>No such page – Charge point trainer</title>
  </head>
  <body>
    <main>
      <h1>No such page</h1>
      <p>This trainer has no page at this address. What this device keeps of your attempts is untouched.</p>
      <p><a href="${start.replaceAll('&', '&amp;')}">To the start of the trainer</a></p>
    </main>
  </body>
</html>
`;

export const NO_SUCH_PAGE = {
  status: 404,
  headers: { 'Content-Type': 'text/html; charset=utf-8', 'Cache-Control': 'no-store' },
} as const;
