// What a round hears of the keyboard, wherever on the page the focus is.
import { beginWriter } from './shelf.js';

let unlisten = () => { };

export function listen(program) {
  stop();
  const heard = event => hear(event, (name, ...given) => program.invokeMethodAsync(name, ...given).catch(() => { }));
  document.addEventListener('keydown', heard);
  beginWriter();
  unlisten = () => document.removeEventListener('keydown', heard);
}

export function stop() {
  unlisten();
}

function hear(event, tell) {
  const pad = document.getElementById('pad');
  const field = document.getElementById('typed');
  if (!pad || !field || event.altKey || event.metaKey || event.defaultPrevented) {
    if (event.key === 'Escape') {
      tell('Escaped');
    }

    return;
  }

  const inField = event.target === field;
  if (!inField && event.target.closest?.('input, textarea, select')) {
    return;
  }

  const isTyping = inField && field.value !== '';
  if (event.key === 'Backspace' || (event.ctrlKey && event.key.toLowerCase() === 'z')) {
    if (!isTyping) {
      event.preventDefault();
      tell('Undone');
    }
  } else if (event.ctrlKey) {
    return;
  } else if (/^[0-9.,\-\u2212]$/.test(event.key)) {
    // The key itself then goes to the field.
    field.focus();
  } else if (event.key.startsWith('Arrow')) {
    if (pad.contains(event.target) && !inField) {
      event.preventDefault();
      moveOnPad(pad, event.target, event.key);
    } else if (!(isTyping && /Left|Right/.test(event.key))) {
      event.preventDefault();
      tell('Moved', /Down|Right/.test(event.key) ? 1 : -1);
    }
  }
}

function moveOnPad(pad, from, key) {
  const values = [...pad.querySelectorAll('button[data-value]')];
  const columns = Number(pad.dataset.columns);
  const by = { ArrowLeft: -1, ArrowRight: 1, ArrowUp: -columns, ArrowDown: columns }[key];
  const at = values.indexOf(from);
  const to = at < 0 ? values.find(v => v.tabIndex === 0) : values[at + by];
  if (to) {
    values.forEach(v => { v.tabIndex = v === to ? 0 : -1; });
    to.focus();
  }
}
