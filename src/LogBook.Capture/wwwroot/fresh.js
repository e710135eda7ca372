// Brings the round by itself: with signal, when what is kept has become old, and never while somebody types or has a form open.
const oldAfter = 4 * 3_600_000; // half a working day: what changed since the morning is here after the break
const look = 60_000;
const afterStart = 5_000; // a cold tablet has other things to do first
const pause = 10 * 60_000; // after a try that failed

// Whether a round that was brought then is old now; one from a later time than now was dated by another clock and counts as old.
export const isOld = (brought, now) => !(now - brought < oldAfter && now - brought > -oldAfter);

// Whether a key may be on its way into a box.
const isTyping = () => Boolean(document.activeElement?.matches?.("input, textarea, select"));

// Looks at intervals, with each return of signal and when the page is looked at again; gives a function that looks now.
export function keepFresh({ brought, now, isFree, bring }) {
  let notBefore = 0;
  let isBusy = false;
  const may = () => navigator.onLine && !document.hidden && isFree() && !isTyping();
  const next = async () => {
    if (isBusy || performance.now() < notBefore || !may()) return;
    isBusy = true;
    try {
      if (!isOld(await brought(), await now()) || !may()) return;
      notBefore = performance.now() + pause;
      await bring();
    } catch {
      // No signal after all, or a server that does not answer: what is here stays, and the button says more.
    } finally {
      isBusy = false;
    }
  };
  addEventListener("online", () => { notBefore = 0; next(); });
  document.addEventListener("visibilitychange", next);
  addEventListener("hashchange", next);
  setInterval(next, look);
  setTimeout(next, afterStart);
  return next;
}
