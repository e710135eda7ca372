// The second key to a person's drafts: made here, kept by the server alone, released by a supervisor when the PIN is forgotten.
import { change } from "./store.js";
import { person, reopen, secondOf } from "./people.js";
import { ask } from "./round.js";

const json = { "Content-Type": "application/json" };

// Sees to it that the server holds a second key that was never out. One at a time: two at once would leave a key on the server that
// nothing here opens.
export const arrange = (code) => navigator.locks.request("logbook-second-" + code, () => provide(code));

// Any answer may be lost: the seal stands here before the key goes out, and an earlier one stays until the server has said that it
// holds the new one.
async function provide(code) {
  const make = secondOf(code);
  const { seconds = [], tablet } = (await person(code)) ?? {};
  const held = seconds.find((second) => second.held);
  const spent = seconds.find((second) => second.spent);
  if (!make || (held && !spent)) return;
  const { id, key, sealed } = await make();
  await change("people", code, (row) => ({ ...row, seconds: [...seconds.filter((one) => one.held || one.spent), { id, sealed }] }));
  const answer = await ask(code, "/tablets/keys/" + id, { method: "PUT", headers: json, body: JSON.stringify({ key, tablet, replaces: (spent ?? held)?.id }) });
  if (answer.ok) await change("people", code, (row) => ({ ...row, seconds: [{ id, sealed, held: true }] }));
}

// Whether there is anything that a supervisor could release; asks for it.
export async function request(code) {
  const { seconds = [] } = (await person(code)) ?? {};
  const answers = await Promise.all(seconds.map(({ id }) => ask(code, "/tablets/keys/" + id + "/requests", { method: "POST" })));
  return answers.some((answer) => answer.ok);
}

// The second key once it is released; undefined before.
export async function released(code) {
  for (const { id } of (await person(code))?.seconds ?? []) {
    const answer = await ask(code, "/tablets/keys/" + id);
    if (answer.ok) return { id, key: (await answer.json()).key };
  }
  return undefined;
}

// A new PIN by a released key; that key is replaced at once, because it has been out.
export async function renew(code, second, pin) {
  const opened = await reopen(code, second, pin);
  if (opened) {
    // Written down first: without signal now, the next unlocking replaces it.
    await change("people", code, (row) => ({ ...row, seconds: (row.seconds ?? []).map((one) => (one.id === second.id ? { ...one, spent: true } : one)) }));
    arrange(code).catch(() => {});
  }
  return opened;
}
