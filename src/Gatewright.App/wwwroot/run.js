// Starts the program, and the worker that keeps it on this device.
(() => {
  'use strict';
  const app = document.getElementById('app');
  Blazor.start({ applicationCulture: globalThis.gatewright.language }).then(() => {
    app.inert = false;
    delete app.dataset.last;
    if ('serviceWorker' in navigator) {
      navigator.serviceWorker.register('service-worker.js', { updateViaCache: 'none' });
    }
  });
})();
