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
