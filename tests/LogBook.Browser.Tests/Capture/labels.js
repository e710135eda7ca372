// Runs the queue against a server that fails in every way, and compares each label with what that server has really done.
async (orders) => {
  const queue = await import("/capture/queue.js");
  const store = await import("/capture/store.js");
  const keys = await import("/capture/keys.js");
  const real = window.fetch;
  const report = { orders: 0, reached: {}, ahead: [] };
  let seed = 20250331;
  const random = () => { seed = (Math.imul(seed, 1103515245) + 12345) >>> 0; return seed / 4294967296; };
  const chance = (share) => random() < share;
  const server = { visits: new Map(), photos: new Set(), mailed: new Set() };
  const answer = (status, body) => new Response(JSON.stringify(body), { status, headers: { "Content-Type": "application/json" } });
  window.fetch = async (address, more = {}) => {
    if (chance(0.15)) throw new TypeError("no signal");
    if (chance(0.1)) return answer(503, {});
    const [, id] = /\/(?:photos|visits)\/([0-9a-f-]{36})/.exec(address) ?? [];
    let said;
    if (address.endsWith("/standing")) {
      if (server.visits.has(id) && chance(0.5)) server.mailed.add(id);
      said = answer(200, { sha256: server.visits.get(id), mailsAccepted: server.mailed.has(id) ? 1 : 0, mailsWaiting: server.mailed.has(id) ? 0 : 1 });
    } else if (address.includes("/photos/")) {
      if (chance(0.1)) return answer(422, {});
      server.photos.add(id);
      said = answer(201, {});
    } else {
      const visit = JSON.parse(more.body).id;
      server.visits.set(visit, await keys.sha256(more.body));
      said = answer(201, { sha256: chance(0.1) ? "0".repeat(64) : server.visits.get(visit) });
    }
    if (chance(0.2)) throw new TypeError("the answer was lost");
    return said;
  };
  const check = async () => {
    for (const row of await queue.visits()) {
      const isThere = server.visits.has(row.id) && row.photos.every((photo) => server.photos.has(photo));
      if (row.state === "server" && !isThere) report.ahead.push("server: " + row.id);
      if (row.state === "mailed" && !(isThere && server.mailed.has(row.id))) report.ahead.push("mailed: " + row.id);
      report.reached[row.state] = (report.reached[row.state] ?? 0) + 1;
    }
  };
  try {
    await store.put("people", { code: "RYA", name: "R. Yaffle", token: await keys.sealForDevice("logbook_none") });
    for (let order = 0; order < orders; order++) {
      const id = crypto.randomUUID();
      const photo = crypto.randomUUID();
      await store.put("photos", { id: photo, visit: id, type: "image/jpeg", sealed: await keys.sealForDevice("picture") });
      const steps = [() => queue.enqueue({ id, version: 1, site: "S", siteName: "Site", person: "RYA", document: JSON.stringify({ id }), photos: chance(0.5) ? [photo] : [] })];
      for (let more = 1 + Math.floor(random() * 4); more > 0; more--) steps.push(() => queue.send());
      for (const step of steps) { await step(); await check(); }
      await store.remove("queue", id);
      report.orders++;
    }
  } finally {
    window.fetch = real;
  }
  return report;
}
