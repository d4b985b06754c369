// The taps that wait: kept on the phone until the server says that it has them. Used by pages and by the service worker.
// How it works and what is kept: docs/offline.md.
(() => {
  "use strict";
  const open = () => new Promise((done, failed) => {
    const asked = indexedDB.open("ashery", 1);
    asked.onupgradeneeded = () => {
      asked.result.createObjectStore("taps", { keyPath: "id" });
      asked.result.createObjectStore("notes", { keyPath: "name" });
    };
    asked.onsuccess = () => done(asked.result);
    asked.onerror = () => failed(asked.error);
  });

  const on = async (store, mode, work) => {
    const db = await open();
    try {
      return await new Promise((done, failed) => {
        const transaction = db.transaction(store, mode);
        const asked = work(transaction.objectStore(store));
        transaction.oncomplete = () => done(asked?.result);
        transaction.onerror = transaction.onabort = () => failed(transaction.error);
      });
    } finally {
      db.close();
    }
  };

  const put = tap => on("taps", "readwrite", taps => taps.put(tap));
  const drop = id => on("taps", "readwrite", taps => taps.delete(id));
  const all = async owner => (await on("taps", "readonly", taps => taps.getAll()))
    .filter(tap => !owner || tap.owner === owner).sort((a, b) => a.at - b.at);
  const note = (name, value) => on("notes", "readwrite", notes => notes.put({ name, value }));
  const noted = async name => (await on("notes", "readonly", notes => notes.get(name)))?.value;

  // Random ids also where the page came without HTTPS and crypto.randomUUID is missing.
  const newId = () => {
    if (crypto.randomUUID) return crypto.randomUUID();
    const b = crypto.getRandomValues(new Uint8Array(16));
    b[6] = (b[6] & 0x0f) | 0x40;
    b[8] = (b[8] & 0x3f) | 0x80;
    const hex = [...b].map(x => x.toString(16).padStart(2, "0")).join("");
    return `${hex.slice(0, 8)}-${hex.slice(8, 12)}-${hex.slice(12, 16)}-${hex.slice(16, 20)}-${hex.slice(20)}`;
  };

  const most = 100;

  // Sends what waits for one owner (garden and person). Gives how many the server has now, and whether it could be reached.
  const sendNow = async owner => {
    let written = 0;
    let saved = "";
    for (;;) {
      const waiting = (await all(owner)).filter(tap => tap.state === "waiting").slice(0, most);
      if (waiting.length === 0) return { reached: true, written, saved };
      let results;
      try {
        const answer = await fetch("/api/journal", {
          method: "POST",
          headers: { "Content-Type": "application/json", Accept: "application/json" },
          body: JSON.stringify(waiting.map(tap => tap.entry)),
          redirect: "error",
        });
        const said = [200, 409, 422].includes(answer.status) ? await answer.json() : {};
        results = said.results;
        saved = said.saved || saved;
        if (!Array.isArray(results) || results.length !== waiting.length) return { reached: true, written, refused: answer.status };
      } catch {
        return { reached: false, written };
      }
      for (let i = 0; i < waiting.length; i++) {
        const [tap, result] = [waiting[i], results[i]];
        if (result.outcome === "written") {
          await drop(tap.id);
          written++;
        } else {
          await put({ ...tap, state: result.outcome, problems: result.problems ?? [], theirs: result.theirs ?? null });
        }
      }
    }
  };

  // One sender at a time; a second send would do no harm (an id is written once), only waste.
  const send = owner => navigator.locks ? navigator.locks.request("ashery-send", () => sendNow(owner)) : sendNow(owner);

  self.AsheryQueue = { put, drop, all, note, noted, newId, send };
})();
