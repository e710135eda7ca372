// Runs the queue against a server that fails in every way, refuses visits (422) and holds other texts of them (409), and compares each
// label, what the first view says of it, and what is kept, with what that server has really done.
async (orders) => {
  const queue = await import("/capture/queue.js");
  const store = await import("/capture/store.js");
  const keys = await import("/capture/keys.js");
  const { homeView } = await import("/capture/home.js");
  const real = window.fetch;
  const report = { orders: 0, reached: {}, ahead: [], lost: [], said: {} };
  let seed = 20250331;
  const random = () => { seed = (Math.imul(seed, 1103515245) + 12345) >>> 0; return seed / 4294967296; };
  const chance = (share) => random() < share;
  const server = { visits: new Map(), photos: new Set(), mailed: new Set(), refused: new Set(), contested: new Map(), settled: new Map(), verdicts: new Map() };
  const answer = (status, body) => new Response(JSON.stringify(body), { status, headers: { "Content-Type": "application/json" } });

  // The same text gets the same verdict, however often it comes.
  const verdictOf = (id) => {
    if (!server.verdicts.has(id)) server.verdicts.set(id, chance(0.15) ? 422 : chance(0.15) ? 409 : 201);
    return server.verdicts.get(id);
  };
  const receive = async (id, body) => {
    const hash = await keys.sha256(body);
    const verdict = verdictOf(id);
    if (verdict === 422) { server.refused.add(id); return answer(422, { issues: [{ path: "systems[0]", code: "required", message: "refused: " + id, blocks: true }] }); }
    if (verdict === 409 && server.settled.get(id) !== "TakeOther") { server.contested.set(id, hash); return answer(409, { title: "other content" }); }
    server.visits.set(id, hash);
    return answer(201, { sha256: chance(0.1) ? "0".repeat(64) : hash });
  };
  const standing = (id) => {
    const contested = server.contested.get(id);
    if (contested && !server.settled.has(id) && chance(0.5)) {
      const decision = chance(0.5) ? "TakeOther" : "KeepStanding";
      server.settled.set(id, decision);
      if (decision === "TakeOther") server.visits.set(id, contested);
    }
    if (server.visits.has(id) && chance(0.5)) server.mailed.add(id);
    return answer(200, {
      sha256: server.visits.get(id) ?? (contested ? "1".repeat(64) : undefined),
      settled: server.settled.has(id) ? { [contested]: server.settled.get(id) } : {},
      mailsAccepted: server.mailed.has(id) ? 1 : 0,
      mailsWaiting: server.mailed.has(id) ? 0 : 1,
    });
  };
  window.fetch = async (address, more = {}) => {
    if (chance(0.15)) throw new TypeError("no signal");
    if (chance(0.1)) return answer(503, {});
    const [, id] = /\/(?:photos|visits)\/([0-9a-f-]{36})/.exec(address) ?? [];
    let said;
    if (address.endsWith("/standing")) said = standing(id);
    else if (address.includes("/photos/")) {
      if (chance(0.1)) return answer(422, {});
      server.photos.add(id);
      said = answer(201, {});
    } else said = await receive(JSON.parse(more.body).id, more.body);
    if (chance(0.2)) throw new TypeError("the answer was lost");
    return said;
  };

  // What a row's label asks of the server.
  const holds = {
    device: () => true,
    server: (row) => server.visits.get(row.id) === row.sha256 && row.photos.every((photo) => server.photos.has(photo)),
    mailed: (row) => holds.server(row) && server.mailed.has(row.id),
    refused: (row) => server.refused.has(row.id) && !server.visits.has(row.id),
    conflict: (row) => server.contested.get(row.id) === row.sha256,
    settled: (row) => server.settled.get(row.id) === "KeepStanding" && !server.visits.has(row.id),
  };
  const nothing = () => {};
  const does = { address: () => "#", goOnWithout: nothing, send: nothing, bring: nothing, register: nothing, pin: nothing, persist: nothing, rescue: nothing, speak: nothing, restore: nothing, throwAway: nothing };
  const sayingOf = (row, drafts) => {
    const view = document.createElement("div");
    view.replaceChildren(...homeView({ queue: [row], drafts, round: null, people: [{ code: "RYA", name: "R. Yaffle" }], shift: 0 }, does));
    return { mark: view.querySelector(".mark")?.textContent.trim(), rows: view.querySelectorAll(".stop").length, goesOn: view.querySelector(".stop .acts a.main") !== null };
  };

  // Whatever the server said, the words, the picture and the way back to the form are here until it holds them itself.
  const checkKept = async (row, words) => {
    const lost = (what) => report.lost.push(row.state + ": " + what);
    if (await keys.openForDevice(row.sealed) !== words) lost("the words");
    for (const photo of row.photos) if (!await store.get("photos", photo)) lost("a photo");
    const draft = await store.get("drafts", row.id);
    const isBack = row.state === "refused";
    if (!draft) return lost("the draft");
    if (draft.closed === isBack) lost(isBack ? "the way back to the form" : "the form is open beside what is sent");
    const issues = isBack && draft.issues ? await keys.openForDevice(draft.issues) : "";
    if (isBack && !issues.includes("refused: " + row.id)) lost("what the server said");
    const { mark, rows, goesOn } = sayingOf(row, [draft]);
    (report.said[row.state] ??= {})[mark] = true;
    if (rows !== 1) lost("stands " + rows + " times in the view");
    if (goesOn !== isBack) lost(isBack ? "no button to go on" : "a button to go on");
  };
  const check = async (words) => {
    for (const row of await queue.visits()) {
      if (!holds[row.state](row)) report.ahead.push(row.state + ": " + row.id);
      report.reached[row.state] = (report.reached[row.state] ?? 0) + 1;
      await checkKept(row, words);
    }
  };
  try {
    await store.put("people", { code: "RYA", name: "R. Yaffle", token: await keys.sealForDevice("logbook_none") });
    for (let order = 0; order < orders; order++) {
      const id = crypto.randomUUID();
      const photo = crypto.randomUUID();
      const words = JSON.stringify({ id });
      await store.put("photos", { id: photo, visit: id, type: "image/jpeg", sealed: await keys.sealForDevice("picture") });
      await store.put("drafts", { id, site: "S", siteName: "Site", person: "RYA", at: Date.now(), closed: false });
      const steps = [() => queue.enqueue({ id, version: 1, site: "S", siteName: "Site", person: "RYA", document: words, photos: chance(0.5) ? [photo] : [] })];
      for (let more = 1 + Math.floor(random() * 4); more > 0; more--) steps.push(() => queue.send());
      for (const step of steps) { await step(); await check(words); }

      // What came back is corrected and sent again: the server takes it, and the label begins anew.
      const [row] = (await queue.visits()).filter((one) => one.id === id);
      if (row.state === "refused") {
        server.verdicts.set(id, 201);
        server.refused.delete(id);
        const corrected = JSON.stringify({ id, corrected: true });
        await queue.enqueue({ id, version: 1, site: "S", siteName: "Site", person: "RYA", document: corrected, photos: row.photos });
        await check(corrected);
        await queue.send();
        await check(corrected);
      }
      await store.remove("queue", id);
      await store.remove("drafts", id);
      report.orders++;
    }
  } finally {
    window.fetch = real;
  }
  return { ...report, said: Object.fromEntries(Object.entries(report.said).map(([state, marks]) => [state, Object.keys(marks).join(" / ")])) };
}
