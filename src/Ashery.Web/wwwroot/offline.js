// Forms that write an entry of the journal: the tap is kept on the phone first, then sent; without a network it waits.
// A form that should do so carries data-entry; the words of the contract are in docs/offline.md. Without this file the form is posted as ever.
(() => {
  "use strict";
  const queue = self.AsheryQueue;
  const owner = () => document.body.dataset.owner ?? "";
  const place = () => document.querySelector("[data-waiting]");
  const keptSince = () => document.documentElement.dataset.kept ?? null;
  let hasNetwork = navigator.onLine;

  const two = n => String(n).padStart(2, "0");
  const local = date => `${date.getFullYear()}-${two(date.getMonth() + 1)}-${two(date.getDate())}`;
  const plus = (day, days) => {
    const date = new Date(`${day}T12:00:00Z`);
    date.setUTCDate(date.getUTCDate() + days);
    return date.toISOString().slice(0, 10);
  };
  const daysBetween = (a, b) => Math.round((Date.parse(`${b}T12:00:00Z`) - Date.parse(`${a}T12:00:00Z`)) / 86400000);

  // The garden's day: what the server said when it last spoke, and as many days on as the phone has seen since.
  const gardenDay = async () => {
    const [now, said] = [local(new Date()), document.body.dataset.day];
    if (said && !keptSince()) {
      await queue.note("day", { garden: said, phone: now });
      return said;
    }
    const known = await queue.noted("day");
    return known ? plus(known.garden, daysBetween(known.phone, now)) : said || now;
  };

  const set = (entry, path, value) => {
    const names = path.split(".");
    const last = names.pop();
    let at = entry;
    for (const name of names) at = at[name] ??= {};
    at[last] = value;
  };

  // The entry that a form would write now, or null when a needed field is empty.
  const read = async (form, button) => {
    const [whole, own] = [JSON.parse(form.dataset.entry), button?.dataset.entry ? JSON.parse(button.dataset.entry) : {}];
    const now = new Date();
    const id = form.querySelector("input[name=entry]");
    const entry = {
      ...whole, ...own,
      id: id?.value || queue.newId(),
      day: whole.day ?? own.day ?? await gardenDay(),
      time: `${two(now.getHours())}:${two(now.getMinutes())}:${two(now.getSeconds())}`,
      facts: { ...whole.facts, ...own.facts },
    };
    if (id) id.value = queue.newId();
    const pots = [...form.querySelectorAll("[data-entry-pot]")];
    if (pots.length > 0) {
      const ticked = pots.filter(pot => pot.checked);
      if (ticked.length === 0) return null;
      entry.pots = ticked.map(pot => pot.dataset.entryPot);
      if (entry.facts.kind === "feedGiven") entry.facts.amounts = ticked.filter(pot => pot.dataset.entryAmount).map(pot => JSON.parse(pot.dataset.entryAmount));
    }
    for (const field of form.querySelectorAll("[data-entry-field]")) {
      if (field.value === "" || ((field.type === "radio" || field.type === "checkbox") && !field.checked)) continue;
      set(entry, field.dataset.entryField, field.dataset.entryType === "number" ? Number(field.value) : field.value);
    }
    if (typeof entry.facts.to === "string" && entry.facts.to.startsWith("+")) entry.facts.to = plus(entry.day, Number(entry.facts.to.slice(1)));
    return entry;
  };

  const element = (name, text, className) => {
    const made = document.createElement(name);
    if (text) made.textContent = text;
    if (className) made.className = className;
    return made;
  };

  const button = (text, work) => {
    const made = element("button", text, "quiet");
    made.type = "button";
    made.addEventListener("click", work);
    return made;
  };

  const taps = n => n === 1 ? "1 tap waits" : `${n} taps wait`;

  const line = tap => {
    const item = element("li");
    item.dataset.tap = tap.id;
    item.append(element("span", tap.says));
    if (tap.state === "refused") {
      item.append(element("strong", " Not taken: " + tap.problems.map(p => `${p.message} ${p.wayOut}`).join(" ")));
      item.append(button("Try again", async () => { await queue.put({ ...tap, state: "waiting" }); await send(); }));
      item.append(button("Drop it", async () => { await queue.drop(tap.id); await show(); }));
    } else if (tap.state === "overtaken") {
      item.append(element("strong", ` Somebody wrote this otherwise meanwhile${tap.theirs?.note ? `: ${tap.theirs.note}` : ""}.`));
      item.append(button("Keep what is written", async () => { await queue.drop(tap.id); await show(); }));
      item.append(button("Write mine as well", async () => {
        const id = queue.newId();
        await queue.put({ ...tap, id, entry: { ...tap.entry, id }, state: "waiting" });
        await queue.drop(tap.id);
        await send();
      }));
    } else {
      item.append(button("Take back", async () => { await queue.drop(tap.id); await show(); }));
    }
    return item;
  };

  // What waits is shown, and what it answers is taken from the page.
  const show = async () => {
    const mine = await queue.all(owner());
    const note = place();
    if (!note) return;
    const since = keptSince();
    const lacksNetwork = !hasNetwork || since !== null;
    note.hidden = mine.length === 0 && !lacksNetwork;
    note.classList.toggle("has-trouble", mine.some(tap => tap.state !== "waiting"));
    const waiting = mine.filter(tap => tap.state === "waiting").length;
    const said = [];
    if (lacksNetwork) said.push(since ? `No network. This page is as of ${new Date(since).toLocaleString("en-GB", { day: "numeric", month: "short", hour: "2-digit", minute: "2-digit" })}.` : "No network.");
    if (waiting > 0) said.push(`${taps(waiting)} on this phone${lacksNetwork ? " and will be sent later" : ""}.`);
    if (waiting < mine.length) said.push("Something could not be written as it was tapped.");
    const list = element("ul");
    list.append(...mine.map(line));
    note.replaceChildren(element("p", said.join(" ")), ...(mine.length > 0 ? [list] : []));
    if (waiting > 0) note.append(button("Send now", send));

    const answered = new Set();
    for (const tap of mine) {
      if (tap.state !== "waiting" || !tap.entry.facts.task) continue;
      for (const pot of tap.entry.pots ?? []) answered.add(`${tap.entry.facts.task}\n${pot}`);
    }
    for (const row of document.querySelectorAll("[data-task][data-pot]")) {
      const gone = answered.has(`${row.dataset.task}\n${row.dataset.pot}`);
      row.hidden = gone;
      for (const box of row.querySelectorAll("[data-entry-pot]")) {
        if (gone) { box.checked = false; box.disabled = true; } else if (box.disabled) { box.disabled = false; box.checked = true; }
      }
    }
    for (const form of document.querySelectorAll("form[data-entry]")) {
      const rows = [...form.querySelectorAll("[data-task][data-pot]")];
      if (rows.length > 0) (form.closest("[data-entry-box]") ?? form).hidden = rows.every(row => row.hidden);
    }
  };

  const send = async () => {
    const sent = await queue.send(owner());
    hasNetwork = sent.reached;
    await show();
    if (!sent.reached && navigator.serviceWorker?.controller) {
      // Where the browser knows how, it is sent even when the page is closed.
      try { await (await navigator.serviceWorker.ready).sync?.register("ashery-taps"); } catch { /* sent when the page is next open */ }
    }
    return sent;
  };

  const queued = async (form, entry, says) => {
    await queue.put({ id: entry.id, owner: owner(), entry, says, at: Date.now(), state: "waiting", problems: [], theirs: null });
    form.dispatchEvent(new CustomEvent("ashery:queued", { bubbles: true, detail: entry }));
    await show();
    const sent = await send();
    if (sent.reached && (await queue.all(owner())).every(tap => tap.id !== entry.id)) {
      const to = new URL(form.dataset.entryThen ?? location.href, location.href);
      to.searchParams.set("saved", sent.saved);
      to.hash = "";
      location.assign(to);
    }
  };

  document.addEventListener("submit", event => {
    const form = event.target;
    if (!form.matches("form[data-entry]") || form.dataset.plain || event.submitter?.hasAttribute("data-entry-plain")) return;
    event.preventDefault();
    event.stopPropagation();
    if (form.dataset.busy) return;
    form.dataset.busy = "yes";
    (async () => {
      const entry = await read(form, event.submitter);
      if (!entry) {
        const say = form.querySelector("[data-entry-empty]");
        if (say) say.hidden = false;
        return;
      }
      await queued(form, entry, event.submitter?.dataset.entrySays ?? form.dataset.entrySays ?? "An entry");
    })().catch(() => {
      // A browser that keeps nothing (private windows of some): the form goes as it would without this file.
      form.dataset.plain = "yes";
      form.requestSubmit(event.submitter);
    }).finally(() => { delete form.dataset.busy; });
  }, true);

  const ticked = event => {
    const all = event.target.closest("[data-tick-all]");
    if (!all) return;
    const boxes = [...all.closest("form").querySelectorAll("[data-entry-pot]:not(:disabled)")];
    const on = boxes.some(box => !box.checked);
    for (const box of boxes) box.checked = on;
  };
  document.addEventListener("click", ticked);

  const arrived = async () => {
    if (document.querySelector("[data-signed-out]")) await signedOut();
    await gardenDay();
    await queue.note("owner", owner());
    for (const all of document.querySelectorAll("[data-tick-all]")) all.hidden = false;
    await show();
    if ((await queue.all(owner())).some(tap => tap.state === "waiting")) await send();
  };

  // Accounts call this, or show a page with data-signed-out: no private page stays in the browser.
  const signedOut = () => new Promise(done => {
    const worker = navigator.serviceWorker?.controller;
    if (!worker) { done(); return; }
    const line = new MessageChannel();
    line.port1.onmessage = () => done();
    worker.postMessage({ type: "signed-out" }, [line.port2]);
  });

  addEventListener("online", async () => {
    const sent = await send();
    if (sent.reached && (sent.written > 0 || keptSince())) location.reload();
  });
  addEventListener("offline", () => { hasNetwork = false; show(); });
  navigator.serviceWorker?.addEventListener("message", event => {
    if (event.data?.type === "sent") { hasNetwork = event.data.reached; if (event.data.written > 0) location.reload(); else show(); }
  });
  navigator.serviceWorker?.register("/sw.js").catch(() => { /* no HTTPS: pages work, and what was tapped waits while the page is open */ });
  self.Ashery = { read, queued, send, show, signedOut };
  self.Blazor?.addEventListener("enhancedload", arrived);
  arrived();
})();
