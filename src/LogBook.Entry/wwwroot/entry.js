// Keeps what is being typed and moves on with Enter. Fields are bound on change, so that no key waits for a server.
const idle = 250;

// For an answer; a server that is this slow is asked again, and a tablet that is at work for this long too.
const patience = 3000;

// A box inside closed details has its place on the page and still cannot be entered.
const isShown = box => box.checkVisibility ? box.checkVisibility() : box.offsetParent !== null && !box.closest("details:not([open])");

// What was typed or changed is told to the form until it answers: a line to a server may break at any key, and keeps what it swallowed
// in the box alone.
function teller(root) {
  const turns = new Map();
  const waiting = new Set();

  // The page's own word that the line is back: what waits need not wait any longer.
  const back = event => {
    if (!root.isConnected) document.removeEventListener("components-reconnect-state-changed", back, true);
    else if (event.detail?.state === "hide") for (const go of waiting) go();
  };
  document.addEventListener("components-reconnect-state-changed", back, true);

  const pause = async time => {
    let go;
    await new Promise(done => {
      go = done;
      waiting.add(go);
      setTimeout(go, time);
    });
    waiting.delete(go);
    return false;
  };

  return async (box, isLeft, ask) => {
    const turn = {};
    turns.set(box, turn);
    for (let tries = 1; ; tries++) {
      const isAnswered = await Promise.race([ask().then(() => true, () => pause(idle)), pause(patience)]);
      if (turns.get(box) !== turn || !box.isConnected) return;
      if (!isAnswered) continue;
      turns.delete(box);
      // The change itself may have been swallowed; twice the same does no harm.
      if (isLeft && tries > 1) box.dispatchEvent(new Event("change", { bubbles: true }));
      return;
    }
  };
}

const canTakeFocus = "a[href], button, input, select, textarea, summary, [tabindex='0']";

// A button that goes away, or is of no use any more, when it is pressed would take the focus with it, and the next Tab would begin at the
// top of the page. So what stands after it gets the focus; where its step is gone, the heading. Whoever taps is left alone: a box with
// the focus would bring up the keyboard.
function keepFocus(root) {
  let at = null;
  let byKeys = false;
  root.addEventListener("keydown", () => { byKeys = true; }, true);
  root.addEventListener("pointerdown", () => { byKeys = false; }, true);
  root.addEventListener("focusin", event => { at = event.target; });
  new MutationObserver(changes => {
    if (!byKeys || !at || document.activeElement !== document.body || (at.isConnected && !at.disabled)) return;
    const gone = changes.find(change => [...change.removedNodes].some(node => node.contains(at)));
    const place = at.isConnected ? at : [gone?.nextSibling, gone?.previousSibling, gone?.target].find(node => node?.isConnected);
    const boxes = [...root.querySelectorAll(canTakeFocus)].filter(box => !box.disabled && isShown(box));
    const isAfter = box => place.contains(box) || place.compareDocumentPosition(box) & Node.DOCUMENT_POSITION_FOLLOWING;
    const isStepThere = boxes.some(box => box.closest(".lb-main-column"));
    const next = (isStepThere && place && boxes.find(isAfter)) || root.querySelector("#visit-step");
    next?.focus();
  }).observe(root, { childList: true, subtree: true, attributeFilter: ["disabled"] });
}

export function attach(root, form) {
  keepFocus(root);
  const timers = new Map();
  const tell = teller(root);
  root.addEventListener("input", event => {
    const box = event.target;
    const key = box.dataset?.key;
    if (!key) return;
    clearTimeout(timers.get(key));
    timers.set(key, setTimeout(() => tell(box, false, () => form.invokeMethodAsync("KeepTyped", key, box.value, box.dataset.unit ?? null)), idle));
  });
  // A field that is left is kept by its own change; a late timer would only repeat it.
  root.addEventListener("change", event => {
    clearTimeout(timers.get(event.target.dataset?.key));
    // Behind the change, which goes by the same line: an answer to this one says that it has arrived.
    setTimeout(() => tell(event.target, true, () => form.invokeMethodAsync("Heard")));
  });
  root.addEventListener("keydown", event => {
    if (event.key !== "Enter" || event.target.tagName !== "INPUT" || event.target.type === "checkbox") return;
    event.preventDefault();
    const boxes = [...root.querySelectorAll(".lb-body input:not([type=checkbox]), .lb-body textarea")].filter(isShown);
    const next = boxes[boxes.indexOf(event.target) + 1];
    if (next) {
      next.focus();
    } else {
      // Leaving the last field first lets its change go before the step does.
      event.target.blur();
      root.querySelector(".lb-next")?.click();
    }
  });
}

// Reads the code of a label where browser and camera can; answers null when the person stops or nothing can be read.
export function canScan() {
  return "BarcodeDetector" in window && Boolean(navigator.mediaDevices?.getUserMedia);
}

export async function scan(root, stopWords) {
  const stream = await navigator.mediaDevices.getUserMedia({ video: { facingMode: "environment" } });
  const before = document.activeElement;
  const cover = document.createElement("div");
  // Whatever happens from here on, the camera is let go.
  try {
    const detector = new BarcodeDetector();
    cover.className = "lb-scan";
    cover.setAttribute("role", "dialog");
    cover.setAttribute("aria-modal", "true");
    cover.setAttribute("aria-label", stopWords);
    const video = document.createElement("video");
    video.srcObject = stream;
    video.muted = true;
    video.playsInline = true;
    const stop = document.createElement("button");
    stop.type = "button";
    stop.className = "lb-button";
    stop.textContent = stopWords;
    cover.append(video, stop);
    root.append(cover);
    stop.focus();
    return await new Promise((done, failed) => {
      let going = true;
      const end = text => {
        going = false;
        done(text);
      };
      stop.addEventListener("click", () => end(null));
      cover.addEventListener("keydown", event => { if (event.key === "Escape") end(null); });
      // The form may be left while the camera runs: its cover goes with it, and no frame may be drawn any more.
      const left = setInterval(() => {
        if (going && !cover.isConnected) end(null);
        if (!going) clearInterval(left);
      }, idle);
      const look = async () => {
        if (!going) return;
        try {
          const codes = await detector.detect(video);
          if (codes.length > 0) return end(codes[0].rawValue);
        } catch { /* a frame that cannot be read yet */ }
        requestAnimationFrame(look);
      };
      video.play().then(look, error => {
        going = false;
        failed(error);
      });
    });
  } finally {
    stream.getTracks().forEach(track => track.stop());
    cover.remove();
    before?.focus?.();
  }
}

const looksKey = "logbook.entry.looks";

// Kept on this device alone; a browser that keeps nothing shows the form as it comes.
export function looks() {
  try { return localStorage.getItem(looksKey); } catch { return null; }
}

export function keepLooks(text) {
  try { localStorage.setItem(looksKey, text); } catch { /* full or forbidden: the wish lasts as long as the page */ }
}

export function focusField(id) {
  const found = document.getElementById(id);
  if (!found) return;
  for (let around = found.closest("details"); around; around = around.parentElement?.closest("details")) around.open = true;
  const target = found.matches("input, select, textarea, button, [tabindex]") ? found : found.querySelector("input, select, textarea, button") ?? found;
  target.focus();
  target.scrollIntoView({ block: "center" });
}

// Done when what stands now is on the screen; a page that nobody sees is not painted and need not be waited for.
export function painted() {
  return new Promise(done => {
    if (document.hidden) return done();
    const late = setTimeout(done, 100);
    requestAnimationFrame(() => setTimeout(() => { clearTimeout(late); done(); }));
  });
}

// Lets a tap or a key that waits go before.
export function breathe() {
  return new Promise(done => setTimeout(done));
}
