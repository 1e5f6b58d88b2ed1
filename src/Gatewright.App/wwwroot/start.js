// Runs before the runtime is there: sets the language, and shows the shed as it was last seen, so that nobody looks at
// an empty screen while the program starts.
(() => {
  'use strict';
  const kept = name => { try { return localStorage.getItem('gatewright.' + name); } catch { return null; } };
  const language = kept('language') ?? (navigator.language.toLowerCase().startsWith('de') ? 'de' : 'en');
  document.documentElement.lang = language;
  const ground = kept('ground');
  if (ground === 'light' || ground === 'dark') {
    document.documentElement.dataset.ground = ground;
  }

  const base = new URL(document.baseURI).pathname;
  if (location.pathname === base) {
    const shed = kept('last-shed');
    if (shed) {
      // Written by this program alone, from text that the framework had made harmless.
      const app = document.getElementById('app');
      app.innerHTML = shed;
      app.inert = true;
      app.dataset.last = 'seen';
    }
  }

  globalThis.gatewright = {
    language,
    // The same beneath the program's own heading, while a large club is still being opened.
    showShed(place) {
      const shed = location.pathname === base ? kept('last-shed') : null;
      if (shed) {
        const seen = document.createElement('template');
        seen.innerHTML = shed;
        seen.content.querySelector('#content h1')?.remove();
        place.inert = true;
        place.replaceChildren(...seen.content.querySelector('#content')?.childNodes ?? []);
      }
    },
    dropShed() { try { localStorage.removeItem('gatewright.last-shed'); } catch { } },
    keepShed() {
      if (location.pathname === base) {
        try {
          localStorage.setItem('gatewright.last-shed', document.getElementById('app').innerHTML);
        } catch {
          // No room: the next start begins with an empty screen, and nothing else is the worse for it.
        }
      }
    },
  };
})();
