// Runs in a page before anything of its own does, and notes when what was there to be seen, in milliseconds from the start of
// the navigation; each is the second frame after the change, when the first has been painted.
(() => {
  'use strict';
  if (globalThis !== globalThis.top) {
    return;
  }

  const marks = globalThis.measured = { seen: null, drawn: null, answered: null, listed: null, taps: [] };
  const painted = then => requestAnimationFrame(() => requestAnimationFrame(() => then(performance.now())));
  let remembered = null;
  let isDrawn = false;

  // The first heading while the program still starts is the screen as it was last seen; any other is the program's own.
  new MutationObserver((_, observer) => {
    const app = document.getElementById('app');
    const heading = app?.querySelector('h1');
    if (heading && app.dataset.last && !remembered) {
      remembered = heading;
      painted(at => marks.seen = at);
    }

    if (heading && heading !== remembered && !app.inert && !isDrawn) {
      isDrawn = true;
      observer.disconnect();
      painted(at => {
        marks.drawn = at;
        answer(app);
      });
    }
  }).observe(document, { childList: true, subtree: true, attributes: true });

  // The first touch: answered when anything of the page has changed by it.
  function answer(app) {
    const buttons = [...app.querySelectorAll('main button')].filter(b => !b.closest('[inert]'));
    const first = buttons.find(b => b.getAttribute('aria-pressed') === 'false') ?? buttons[0]
      ?? app.querySelector('a[href="more"]') ?? app.querySelector('button');
    const back = buttons.find(b => b.getAttribute('aria-pressed') === 'true') ?? app.querySelector('nav a[href="./"]:not(.mark)');
    new MutationObserver((_, observer) => {
      observer.disconnect();
      painted(at => {
        marks.answered = at;
        back?.click();
        list(app);
      });
    }).observe(app, { childList: true, subtree: true, attributes: true, characterData: true });
    first.click();
  }

  // The shed as the journal tells it: its boats, not those that were seen last.
  function list(app) {
    const isListed = () => [...app.querySelectorAll('.boat-link')].some(b => !b.closest('[inert]'));
    const told = () => painted(at => marks.listed = at);
    if (isListed()) {
      told();
      return;
    }

    new MutationObserver((_, observer) => {
      if (isListed()) {
        observer.disconnect();
        told();
      }
    }).observe(app, { childList: true, subtree: true, attributes: true });
  }

  // Readings tapped in: from when the finger's event came to the browser, which the click made of it tells as well, to the frame after
  // the verdict stands there. Whoever listens to the finger itself has each of its events brought to the page, which costs time of its own.
  let began = null;
  let said = null;
  const spoken = () => document.querySelector('.desk [role=status].hidden-words')?.textContent ?? '';
  addEventListener('click', event => {
    if (event.target.closest?.('#pad .value')) {
      [began, said] = [event.timeStamp, spoken()];
    }
  }, { capture: true });
  new MutationObserver(() => {
    const now = began !== null ? spoken() : '';
    if (began !== null && now !== '' && now !== said) {
      const from = began;
      began = null;
      const isTold = !!document.querySelector('.under .line, .story .verdict');
      painted(at => marks.taps.push({ ms: at - from, isTold }));
    }
  }).observe(document, { childList: true, subtree: true, characterData: true });
})();
