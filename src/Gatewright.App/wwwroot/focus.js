// The first of these places that is on the page takes the focus: what had it is gone, and it must not fall to the page.
export function focus(places) {
  for (const place of places) {
    const found = document.querySelector(place);
    if (found && !found.disabled) {
      found.focus();
      return;
    }
  }
}
