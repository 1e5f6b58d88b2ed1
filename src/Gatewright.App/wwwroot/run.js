// Starts the program, and the worker that keeps it on this device.
(() => {
  'use strict';
  const app = document.getElementById('app');
  import('./shelf.js').then(shelf => shelf.prepare()).catch(() => { });

  // The program is asked for first: while its files come, the shed as it was last seen is laid out.
  let started;
  try {
    started = Blazor.start({ configureRuntime: runtime => runtime.withEnvironmentVariable('GATEWRIGHT_LANGUAGE', globalThis.gatewright.language) });
  } finally {
    globalThis.gatewright.showLastSeen();
  }

  // What was last seen goes when the program has drawn its first page, not before: until then nothing answers a touch.
  new MutationObserver((_, watch) => {
    watch.disconnect();
    app.inert = false;
    delete app.dataset.last;
    delete app.dataset.old;
  }).observe(app, { childList: true });
  started.then(() => {
    if ('serviceWorker' in navigator) {
      // Keeping the program takes the processor and the network: the first screen comes before it.
      const keep = () => navigator.serviceWorker.register('service-worker.js', { updateViaCache: 'none' });
      'requestIdleCallback' in globalThis ? requestIdleCallback(keep, { timeout: 5000 }) : setTimeout(keep, 2000);
    }
  });
})();
