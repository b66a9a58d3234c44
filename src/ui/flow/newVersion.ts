/**
 * The worker that serves the page without a network, and a newer version of the page: it waits until somebody takes
 * it. Where the browser has no workers, as on plain http, nothing happens and the page works all the same.
 */

const canServe = (): boolean => import.meta.env.PROD && 'serviceWorker' in navigator;

let isTaking = false;

/** Registers the worker once the page has come to rest, so that it costs the first screen nothing. */
export function serveOffline(): void {
  if (!canServe()) return;
  const { serviceWorker } = navigator;
  const register = () =>
    serviceWorker.register('./sw.js', { updateViaCache: 'none' }).catch(() => {
      // A browser that allows no worker here: everything but offline works.
    });
  if (document.readyState === 'complete') register();
  else window.addEventListener('load', register, { once: true });
  let hadWorker = serviceWorker.controller !== null;
  serviceWorker.addEventListener('controllerchange', () => {
    // The first worker serves the page as it is; a newer one, taken here or in another tab, brings a newer page.
    if (hadWorker && (isTaking || !location.hash.startsWith('#/attempt'))) location.reload();
    hadWorker = true;
  });
}

/** Looks for a newer version, and tells once one waits. Returns how to stop looking. */
export function watchForNewVersion(onWaiting: (take: () => void) => void): () => void {
  let isOver = false;
  const tell = ({ waiting }: ServiceWorkerRegistration) => {
    // Without a worker in charge a waiting one is the very first, and there is nothing to take.
    if (isOver || waiting === null || navigator.serviceWorker.controller === null) return;
    onWaiting(() => {
      isTaking = true;
      waiting.postMessage({ type: 'SKIP_WAITING' });
    });
  };
  const watch = (registration: ServiceWorkerRegistration) => {
    tell(registration);
    registration.addEventListener('updatefound', () => {
      registration.installing?.addEventListener('statechange', () => tell(registration));
    });
    // Without a network there is none.
    registration.update().catch(() => {});
  };
  if (canServe()) navigator.serviceWorker.ready.then(watch);
  return () => {
    isOver = true;
  };
}
