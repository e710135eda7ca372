// Writes what waits into a file in the exchange format, for when a tablet cannot send it any more.
import { openForDevice } from "./keys.js";
import { isOpen, visits } from "./queue.js";

// Hands a file to the browser.
export function save(name, content) {
  const link = document.createElement("a");
  link.href = URL.createObjectURL(content);
  link.download = name;
  link.click();
  // The browser reads it after this returns.
  setTimeout(() => URL.revokeObjectURL(link.href), 60_000);
}

export async function rescueFile() {
  const waiting = (await visits()).filter(isOpen);
  const documents = await Promise.all(waiting.map(async (row) => JSON.parse(await openForDevice(row.sealed))));
  const text = JSON.stringify({ format: "logbook-exchange", version: 1, visits: documents });
  save("logbook-visits-" + new Date().toISOString().slice(0, 10) + ".json", new Blob([text], { type: "application/json" }));
}
