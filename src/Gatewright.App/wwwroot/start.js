// Runs before the runtime is there: sets the language, and has what shows the shed as it was last seen, so that nobody looks
// at an empty screen while the program starts.
(() => {
  'use strict';
  const kept = name => { try { return localStorage.getItem('gatewright.' + name); } catch { return null; } };
  const language = kept('language') ?? (navigator.language.toLowerCase().startsWith('de') ? 'de' : 'en');
  document.documentElement.lang = language;
  if (language === 'de') {
    const fault = document.getElementById('blazor-error-ui');
    fault.querySelector('p').textContent = 'In diesem Programm ging etwas schief. Was Sie aufgezeichnet haben, ist auf diesem Gerät geblieben.';
    fault.querySelector('a').textContent = 'Neu beginnen';
  }

  const ground = kept('ground');
  if (ground === 'light' || ground === 'dark') {
    document.documentElement.dataset.ground = ground;
  }

  // The first day that a page writes by the browser's own knowledge of days costs a slow phone a twentieth of a second: what was kept is written already.
  const written = at => new Date(at).toLocaleString(language, { dateStyle: 'medium', timeStyle: 'short' });
  const lastSeen = () => {
    const [tongue, text] = kept('last-shed-when')?.split('|') ?? [];
    const at = kept('last-shed-at');
    return tongue === language ? text : at ? written(Number(at)) : '';
  };

  // What stands there may have been overtaken: it says so, and since when. Where something was recorded since, no verdict
  // and no hold is shown: a boat that is held since must not look as one that is not.
  const asLastSeen = place => {
    const isOld = kept('last-shed-old') !== null;
    const since = language === 'de' ? '. Seither wurde etwas aufgezeichnet: Die Urteile folgen.' : '. Something was recorded since: verdicts follow.';
    place.dataset.last = (language === 'de' ? 'Wie zuletzt gesehen ' : 'As last seen ') + lastSeen() + (isOld ? since : '');
    place.toggleAttribute('data-old', isOld);
  };

  // What of a page stands under its places: the boats, of a shed.
  const contentOf = page => [...page.querySelector('#content')?.childNodes ?? []];
  const pageOf = html => {
    const page = document.createElement('template');
    page.innerHTML = html;
    return page.content;
  };

  // The boats that stand on the screen before anybody scrolls, and somewhat more: the others of a large club are a tenth of a
  // slow phone's start, and come once the program has its first screen.
  const firstOf = app => {
    const isFar = [...app.querySelectorAll('.boat')].map(boat => boat.getBoundingClientRect().top + scrollY > 1.5 * innerHeight);
    const first = app.cloneNode(true);
    first.querySelectorAll('.boat').forEach((boat, i) => isFar[i] && boat.remove());
    first.querySelectorAll('.rack').forEach(rack => rack.querySelector('.boat') ?? rack.remove());
    return first.innerHTML;
  };
  let seen = null;
  let isWhole = false;

  const base = new URL(document.baseURI).pathname;

  globalThis.gatewright = {
    language,
    // In the whole place of the program, before it is there.
    showLastSeen() {
      const shed = location.pathname === base ? kept('last-shed-first') ?? kept('last-shed') : null;
      if (shed) {
        // Written by this program alone, from text that the framework had made harmless.
        const app = document.getElementById('app');
        app.innerHTML = shed;
        app.inert = true;
        asLastSeen(app);
        seen = contentOf(app);
      }
    },
    // The same beneath the program's own heading, while a large club is still being opened.
    showShed() {
      const place = document.querySelector('.last-seen');
      const shed = location.pathname === base ? kept('last-shed') : null;
      if (place && shed) {
        // What stood there until now was put away by the framework, whole: it is put back, not made once more.
        const fill = content => {
          place.replaceChildren(...content);
          place.querySelector('h1')?.remove();
        };
        place.inert = true;
        asLastSeen(place);
        if (seen) {
          fill(seen);
        }

        // Once whole it stays whole: what is shown while the club opens is put in another place as it goes on.
        if (!isWhole) {
          gatewright.painted().then(() => {
            if (place.isConnected) {
              isWhole = true;
              seen = contentOf(pageOf(shed));
              fill(seen);
            }
          });
        }
      }
    },
    // Told when what was drawn is on the screen, and whoever touches it at once has been answered: a page that nobody sees is
    // never painted, and does not wait for it.
    painted: () => new Promise(told => {
      setTimeout(told, 1000);
      requestAnimationFrame(() => requestAnimationFrame(() => setTimeout(told, 150)));
    }),
    namePage(name) { document.title = name ? name + ' · Gatewright' : 'Gatewright'; },
    outdateShed() { try { localStorage.setItem('gatewright.last-shed-old', ''); } catch { } },
    keepShed() {
      [seen, isWhole] = [null, false];
      if (location.pathname === base) {
        try {
          const app = document.getElementById('app');
          localStorage.setItem('gatewright.last-shed', app.innerHTML);
          localStorage.setItem('gatewright.last-shed-first', firstOf(app));
          const now = Date.now();
          localStorage.setItem('gatewright.last-shed-at', now);
          localStorage.setItem('gatewright.last-shed-when', language + '|' + written(now));
          localStorage.removeItem('gatewright.last-shed-old');
        } catch {
          // No room: the next start begins with an empty screen, and nothing else is the worse for it.
        }
      }
    },
  };
})();
