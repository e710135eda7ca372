// Runs before any module is here: opens the store and reads, in one transaction, all that the first view shows. A cold tablet does
// this while the rest of the shell is still being loaded. Where there is no store yet, or anything is odd, the modules do it all.
globalThis.logbookFirst = new Promise((resolve) => {
  const request = indexedDB.open("logbook-capture");
  request.onupgradeneeded = () => request.transaction.abort();
  request.onerror = () => resolve(undefined);
  request.onsuccess = () => {
    const database = request.result;
    database.onversionchange = () => database.close();
    const read = {};
    const keep = (name) => ({ target }) => { read[name] = target.result; };
    try {
      const transaction = database.transaction(["device", "people", "queue", "drafts", "round"]);
      const device = transaction.objectStore("device");
      device.get("settings").onsuccess = ({ target: { result: settings } }) => {
        read.settings = settings;
        if (settings?.last) transaction.objectStore("round").get("today:" + settings.last).onsuccess = keep("sealed");
      };
      device.get("key").onsuccess = keep("key");
      device.get("clock").onsuccess = keep("clock");
      for (const name of ["people", "queue", "drafts"]) transaction.objectStore(name).getAll().onsuccess = keep(name);
      transaction.onabort = () => resolve({ database });
      transaction.oncomplete = async () => {
        const { settings, key, clock, people, queue, drafts, sealed } = read;
        let round;
        try {
          const { iv, data } = sealed.sealed;
          round = JSON.parse(new TextDecoder().decode(await crypto.subtle.decrypt({ name: "AES-GCM", iv }, key.key, data)));
        } catch {
          // No round yet, or one that cannot be read: the modules look again, and say so.
        }
        resolve({ database, key: key?.key, view: settings?.last && round && { settings, people, queue, drafts, round, shift: clock?.shift ?? 0 } });
      };
    } catch {
      database.close();
      resolve(undefined);
    }
  };
});

// The runtime comes up while the first view is made and read, so that the form opens at once. Its files are on a device whose worker
// serves this page; on any other they would hold up the view.
if (navigator.serviceWorker?.controller) import("./runtime.js").then(({ start }) => start()).catch(() => {});
