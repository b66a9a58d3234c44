/** Longer than any picture should take to come; a page that nobody looks at draws none. */
const AT_THE_LATEST_MS = 100;

/** Resolves once what was just asked for is on the screen, or the page is left: what holds up the picture comes after it. */
export const afterPicture = (): Promise<void> =>
  new Promise((resolve) => {
    const done = () => {
      clearTimeout(late);
      removeEventListener('pagehide', done);
      resolve();
    };
    const late = setTimeout(done, AT_THE_LATEST_MS);
    addEventListener('pagehide', done);
    requestAnimationFrame(() => setTimeout(done));
  });
