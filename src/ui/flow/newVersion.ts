/**
 * The worker that serves this copy of the page without a network (offline/sw.ts), and a newer version of the page: it
 * waits until somebody takes it. Another copy on the same host, in a folder above this one, has a worker that may stand
 * in until this one's own is there; it is none of this copy's business. Where the browser has no workers, as on plain
 * http, nothing happens and the page works all the same.
 */

const canServe = (): boolean => import.meta.env.PROD && 'serviceWorker' in navigator;

const ownWorker = (): string => new URL('sw.js', location.href).href;

/** Whether this copy's own worker serves the page. */
const isServed = (): boolean => navigator.serviceWorker.controller?.scriptURL === ownWorker();

/** A browser's Trusted Types, of which TypeScript does not know; what they make of an address stands for a string. */
interface TrustedTypes {
  createPolicy(
    name: string,
    rules: { createScriptURL: (address: string) => string },
  ): { createScriptURL: (address: string) => string };
}

/** The page's policy (vite.config.ts) lets no text become a script; this lets that one address through. */
function trusted(address: string): string {
  const { trustedTypes } = globalThis as { trustedTypes?: TrustedTypes };
  if (trustedTypes === undefined) return address;
  const policy = trustedTypes.createPolicy('own-worker', {
    createScriptURL: (asked) => {
      if (asked !== ownWorker()) throw new TypeError(`${asked} is not the worker of this page`);
      return asked;
    },
  });
  return policy.createScriptURL(address);
}

let isTaking = false;

let tellServed: () => void;
/** Fulfilled once this copy's own worker serves the page. What the browser knows of before may be another copy's. */
const served = new Promise<void>((resolve) => {
  tellServed = resolve;
});

/** Registers the worker once the page has come to rest, so that it costs the first screen nothing. */
export function serveOffline(): void {
  if (!canServe()) return;
  const { serviceWorker } = navigator;
  const register = async () => {
    try {
      await serviceWorker.register(trusted(ownWorker()), { updateViaCache: 'none' });
    } catch {
      // A browser, or a host's own policy, that allows no worker here: everything but offline works.
    }
  };
  if (document.readyState === 'complete') register();
  else window.addEventListener('load', register, { once: true });
  let wasServed = isServed();
  if (wasServed) tellServed();
  serviceWorker.addEventListener('controllerchange', () => {
    if (!isServed()) return;
    // The first worker serves the page as it is; a newer one, taken here or in another tab, brings a newer page.
    if (wasServed && (isTaking || !location.hash.startsWith('#/attempt'))) location.reload();
    wasServed = true;
    tellServed();
  });
}

/** Looks for a newer version, and tells once one waits. Returns how to stop looking. */
export function watchForNewVersion(onWaiting: (take: () => void) => void): () => void {
  let isOver = false;
  const tell = ({ waiting }: ServiceWorkerRegistration) => {
    if (isOver || waiting === null) return;
    onWaiting(() => {
      isTaking = true;
      waiting.postMessage({ type: 'SKIP_WAITING' });
    });
  };
  const watch = (registration: ServiceWorkerRegistration | undefined) => {
    if (registration === undefined) return;
    tell(registration);
    registration.addEventListener('updatefound', () => {
      registration.installing?.addEventListener('statechange', () => tell(registration));
    });
    // Without a network there is none.
    registration.update().catch(() => {});
  };
  if (canServe()) served.then(() => navigator.serviceWorker.getRegistration()).then(watch);
  return () => {
    isOver = true;
  };
}
