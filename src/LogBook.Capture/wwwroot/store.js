// What this device keeps, in IndexedDB. A write counts when its transaction is complete, and the browser is asked to have it on disk by then.
const name = "logbook-capture";
const version = 1;
let opening;
let isFirst = true;

// Tablets close the connection under memory pressure, and a newer page asks for it: the next use opens it again.
function watched(opened) {
  opened.onclose = () => { opening = undefined; };
  opened.onversionchange = () => { opened.close(); opening = undefined; };
  return opened;
}

// What first.js opened is gone on with; a store that has not got its shape yet is opened anew.
async function firstOrOpen() {
  const first = (await globalThis.logbookFirst)?.database;
  return first?.version === version ? watched(first) : open();
}

function open() {
  return new Promise((resolve, reject) => {
    const request = indexedDB.open(name, version);
    request.onupgradeneeded = () => {
      const made = request.result;
      made.createObjectStore("device", { keyPath: "id" });
      made.createObjectStore("people", { keyPath: "code" });
      made.createObjectStore("drafts", { keyPath: "id" });
      made.createObjectStore("typed", { keyPath: "id" });
      made.createObjectStore("queue", { keyPath: "id" });
      made.createObjectStore("photos", { keyPath: "id" }).createIndex("visit", "visit");
      made.createObjectStore("round", { keyPath: "id" });
    };
    request.onsuccess = () => {
      resolve(watched(request.result));
    };
    request.onerror = () => reject(request.error);
    request.onblocked = () => reject(new Error("The store of this device is in use by an older page."));
  });
}

async function database() {
  opening ??= isFirst ? firstOrOpen() : open();
  isFirst = false;
  try {
    return await opening;
  } catch (error) {
    opening = undefined;
    throw error;
  }
}

// Runs one transaction; work may only use the stores it is given, without waiting for anything else. Resolves when all is kept.
async function transact(stores, mode, work) {
  for (let attempt = 1; ; attempt++) {
    const opened = await database();
    let transaction;
    try {
      transaction = opened.transaction(stores, mode, mode === "readwrite" ? { durability: "strict" } : {});
    } catch (error) {
      // The connection was closed meanwhile.
      opening = undefined;
      if (attempt > 1) throw error;
      continue;
    }
    return await new Promise((resolve, reject) => {
      let answer;
      transaction.oncomplete = () => resolve(answer instanceof IDBRequest ? answer.result : answer);
      transaction.onabort = () => reject(transaction.error ?? new Error("Not kept."));
      try {
        answer = work(...[].concat(stores).map((store) => transaction.objectStore(store)));
      } catch (error) {
        transaction.abort();
        reject(error);
      }
    });
  }
}

export const read = (stores, work) => transact(stores, "readonly", work);
export const write = (stores, work) => transact(stores, "readwrite", work);
export const get = (store, key) => read(store, (rows) => rows.get(key));
export const all = (store) => read(store, (rows) => rows.getAll());
export const put = (store, row) => write(store, (rows) => { rows.put(row); });
export const remove = (store, key) => write(store, (rows) => { rows.delete(key); });

// Changes one row under the eyes of all tabs; the change sees the row as it stands and gives the new one, or nothing to leave it.
export const change = (store, key, alter) => write(store, (rows) => {
  rows.get(key).onsuccess = (event) => {
    const altered = alter(event.target.result);
    if (altered) rows.put(altered);
  };
});

// Opening takes a cold device a while: begun before anybody asks.
database().catch(() => {});
