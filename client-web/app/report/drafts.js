/** Words that were written and not kept yet: this browser holds them, so that no closed window takes them away. */
const home = id => `report:${id}`;

/** What this browser holds of a report: the sheet, the sheet it began from and the version of that; null where it holds nothing. */
export function held(id) {
  try {
    const one = JSON.parse(localStorage.getItem(home(id)));
    return one?.sheet?.parts && one.base?.parts ? one : null;
  } catch { return null; }
}

export function hold(id, draft) {
  try { localStorage.setItem(home(id), JSON.stringify(draft)); } catch { /* It still stands in the form. */ }
}

export function letGo(id) {
  try { localStorage.removeItem(home(id)); } catch { /* There is nothing to let go of. */ }
}
