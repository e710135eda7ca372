// Makes elements; texts always go in as texts.
export function el(tag, properties = {}, ...children) {
  const made = document.createElement(tag);
  for (const [name, value] of Object.entries(properties)) {
    if (value === undefined || value === null || value === false) continue;
    if (name.startsWith("on")) made.addEventListener(name.slice(2), value);
    else if (name in made && !name.includes("-")) made[name] = value;
    else made.setAttribute(name, value === true ? "" : value);
  }
  made.append(...children.flat().filter((child) => child !== null && child !== undefined && child !== false));
  return made;
}

export const button = (text, press, more = {}) => el("button", { type: "button", onclick: press, ...more }, text);

// A second press while the first is under way does nothing.
export const once = (work) => {
  let busy = false;
  return async (...given) => {
    if (busy) return;
    busy = true;
    try { await work(...given); } finally { busy = false; }
  };
};

// What is made anew would take the focus with it. Gives how to bring it back: to what has the same name, else to the heading.
export function focusIn(place) {
  const at = document.activeElement;
  if (!place.contains(at) || at === place) return () => {};
  const nameOf = (one) => [one.tagName, one.id, one.getAttribute("href"), one.textContent].join("\n");
  const sameAs = (name) => [...place.querySelectorAll(at.tagName)].filter((one) => nameOf(one) === name && !one.disabled);
  const name = nameOf(at);
  const turn = sameAs(name).indexOf(at);
  return () => (sameAs(name)[turn] ?? place.querySelector("h1"))?.focus({ preventScroll: true });
}
