// What the page hears from outside: the network coming back, news from the server, other pages over the same shelf.
const channel = new BroadcastChannel('gatewright');
let news;

export function listen(program) {
  const tell = (name, ...given) => program.invokeMethodAsync(name, ...given).catch(() => { });
  addEventListener('online', () => tell('Woken'));
  document.addEventListener('visibilitychange', () => {
    if (document.visibilityState === 'visible') {
      tell('Woken');
    }
  });
  channel.onmessage = message => tell('WrittenElsewhere', message.data);
}

export function tellOthers(club) {
  channel.postMessage(club);
}

// The browser opens the stream again by itself when it is cut; while a club is refused, the next visit tries again.
export function follow(program, club) {
  news?.close();
  if (!club) {
    return;
  }

  news = new EventSource(`/api/clubs/${encodeURIComponent(club)}/news`);
  news.addEventListener('grown', event => program.invokeMethodAsync('Grown', club, Number(event.data)).catch(() => { }));
}
