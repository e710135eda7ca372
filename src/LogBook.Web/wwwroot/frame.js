// The frame's own small script: the look of this device, menus that close, and coming back after a lost line.
(() => {
  "use strict";
  const year = 31536000;

  // By which link each page was left: whoever comes back to a long list by keyboard goes on from there, not from its top.
  const left = new Map();
  const backWithinMs = 5000;

  function comeBackTo(href) {
    const done = new AbortController();
    const place = () => [...document.querySelectorAll("main a[href]")].find((link) => link.getAttribute("href") === href);
    const go = () => {
      const at = document.activeElement;
      if (at === document.body || at?.matches("h1")) place()?.focus();
    };

    // The list comes after the page, and the page's heading takes the focus for itself: look until the person does something else.
    const watch = new MutationObserver(go);
    watch.observe(document.body, { childList: true, subtree: true });
    document.addEventListener("focusin", go, { signal: done.signal });
    for (const act of ["keydown", "pointerdown", "popstate"]) window.addEventListener(act, () => done.abort(), { signal: done.signal, capture: true });
    done.signal.addEventListener("abort", () => watch.disconnect());
    setTimeout(() => done.abort(), backWithinMs);
    go();
  }

  window.addEventListener("popstate", () => {
    const href = left.get(location.href);
    if (href) comeBackTo(href);
  });

  document.addEventListener("click", (event) => {
    const target = event.target instanceof Element ? event.target : null;
    if (!target) return;

    const look = target.closest("[data-set-look]");
    if (look) {
      const value = look.getAttribute("data-set-look");
      document.documentElement.setAttribute("data-look", value);
      const secure = location.protocol === "https:" ? "; secure" : "";
      document.cookie = `logbook-look=${value}; path=/; max-age=${year}; samesite=lax${secure}`;
    }

    if (target.closest("[data-print]")) window.print();

    const jump = target.closest("[data-focus]");
    const place = jump && document.getElementById(jump.getAttribute("data-focus"));
    if (place) { place.scrollIntoView({ block: "center" }); place.focus({ preventScroll: true }); }

    const link = target.closest("main a[href]");
    if (link) left.set(location.href, link.getAttribute("href"));

    if (target.closest("[data-reload]")) { event.preventDefault(); location.reload(); }

    for (const menu of document.querySelectorAll("details[data-menu][open]")) {
      if (!menu.contains(target) || (target.closest("a") && menu.contains(target))) menu.open = false;
    }
  });

  document.addEventListener("keydown", (event) => {
    if (event.key !== "Escape") return;
    for (const menu of document.querySelectorAll("details[data-menu][open]")) {
      menu.open = false;
      menu.querySelector("summary")?.focus();
    }
  });

  const dialog = document.getElementById("components-reconnect-modal");
  if (!dialog || typeof Blazor === "undefined") return;

  let waiting = false;
  let trying = false;

  // The line comes back, or the page is loaded anew: what was typed is kept as a draft on the server.
  async function comeBack() {
    if (trying) return;
    trying = true;
    try {
      const answer = await fetch("/health/live", { cache: "no-store" });
      if (!answer.ok) return;
      if (await Blazor.reconnect()) { waiting = false; dialog.close(); return; }
      if (await Blazor.resumeCircuit()) { waiting = false; dialog.close(); return; }
      location.reload();
    } catch {
      // Still no server; the timer tries again.
    } finally {
      trying = false;
    }
  }

  dialog.addEventListener("components-reconnect-state-changed", (event) => {
    switch (event.detail.state) {
      case "show": if (!dialog.open) dialog.showModal(); break;
      case "hide": waiting = false; dialog.close(); break;
      case "failed": waiting = true; comeBack(); break;
      case "rejected": location.reload(); break;
    }
  });
  dialog.querySelector("[data-reconnect]")?.addEventListener("click", comeBack);
  dialog.addEventListener("cancel", (event) => event.preventDefault());
  document.addEventListener("visibilitychange", () => { if (waiting && document.visibilityState === "visible") comeBack(); });
  window.addEventListener("online", () => { if (waiting) comeBack(); });
  setInterval(() => { if (waiting) comeBack(); }, 3000);

  Blazor.start({ circuit: { reconnectionOptions: { maxRetries: 10, retryIntervalMilliseconds: (tries) => (tries < 2 ? 300 : 2000) } } });
})();
