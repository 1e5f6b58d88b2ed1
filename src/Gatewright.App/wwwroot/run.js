// Starts the program, and the worker that keeps it on this device.
(() => {
  'use strict';
  const app = document.getElementById('app');
  import('./shelf.js').then(shelf => shelf.prepare()).catch(() => { });

  // What was last seen goes when the program has drawn its first page, not before: until then nothing answers a touch.
  new MutationObserver((_, watch) => {
    watch.disconnect();
    app.inert = false;
    delete app.dataset.last;
    delete app.dataset.old;
  }).observe(app, { childList: true });
  Blazor.start({ configureRuntime: runtime => runtime.withEnvironmentVariable('GATEWRIGHT_LANGUAGE', globalThis.gatewright.language) }).then(() => {
    if ('serviceWorker' in navigator) {
      // Keeping the program takes the processor and the network: the first screen comes before it.
      const keep = () => navigator.serviceWorker.register('service-worker.js', { updateViaCache: 'none' });
      'requestIdleCallback' in globalThis ? requestIdleCallback(keep, { timeout: 5000 }) : setTimeout(keep, 2000);
    }
  });
})();
