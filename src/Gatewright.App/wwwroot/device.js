// What this browser alone can say or do: room on the disk, choices that hold before the program runs, a file to keep.
export async function room() {
  const kept = await navigator.storage?.persisted?.() ?? false;
  const { usage, quota } = await navigator.storage?.estimate?.() ?? {};
  return JSON.stringify({ kept, used: Math.round(usage ?? -1), most: Math.round(quota ?? -1) });
}

export async function persist() {
  return await navigator.storage?.persist?.() ?? false;
}

export function chosen(name) {
  return localStorage.getItem('gatewright.' + name);
}

export function choose(name, value) {
  value === null ? localStorage.removeItem('gatewright.' + name) : localStorage.setItem('gatewright.' + name, value);
}

export function setGround(ground) {
  choose('ground', ground);
  if (ground === null) {
    delete document.documentElement.dataset.ground;
  } else {
    document.documentElement.dataset.ground = ground;
  }
}

// The shed as it was last seen is in the old language, or of a club that is no longer open: nothing of it stays.
export function forgetShed() {
  Object.keys(localStorage).filter(name => name.startsWith('gatewright.last-shed')).forEach(name => localStorage.removeItem(name));
}

export function save(name, content, type) {
  const link = document.createElement('a');
  link.href = URL.createObjectURL(new Blob([content], { type }));
  link.download = name;
  link.click();
  setTimeout(() => URL.revokeObjectURL(link.href), 60000);
}
