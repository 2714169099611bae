// One wall, one piece after the other. Ticks are kept on this device at once, and sent when there is a way to send them.
"use strict";
(function () {
  const read = (key, otherwise) => { try { return JSON.parse(localStorage.getItem(key)) || otherwise; } catch { return otherwise; } };
  const write = (key, value) => { try { localStorage.setItem(key, JSON.stringify(value)); return true; } catch { return false; } };

  function client() {
    let id = read("dryfit-client", "");
    if (!id) { id = "c" + Array.from(crypto.getRandomValues(new Uint32Array(4)), n => n.toString(36)).join(""); write("dryfit-client", id); }
    return id;
  }
  function seq() { const n = read("dryfit-seq", 0) + 1; write("dryfit-seq", n); return n; }

  let sending = false;
  async function deliver(address) {
    const box = "dryfit-unsent " + address;
    if (sending || !read(box, []).length) return;
    sending = true;
    try {
      const batch = read(box, []).slice(0, 100);
      const answer = await fetch(address, { method: "POST", headers: { "Content-Type": "application/json" }, body: JSON.stringify(batch) });
      if (answer.ok || answer.status === 400 || answer.status === 409) write(box, read(box, []).slice(batch.length));
    } catch { /* no connection: they stay in the box */ }
    sending = false;
  }
  function send(address, piece, outline, done) {
    const box = "dryfit-unsent " + address;
    write(box, read(box, []).concat([{ Piece: piece, Outline: outline, Done: done, Client: client(), Seq: seq(), Head: Number(document.body.dataset.head) || 0 }]));
    deliver(address);
  }
  window.dryfitTick = { send, deliver, unsent: address => read("dryfit-unsent " + address, []).length };

  // What others tick or change comes in while there is a connection.
  function follow(take) {
    const room = document.body.dataset.room;
    if (!room || !window.EventSource) return;
    const live = new EventSource(room + "/live"), look = async () => { try { const a = await fetch(location.href); if (a.ok) take(await a.text()); } catch { /* the next change tries again */ } };
    live.addEventListener("head", e => { if (e.data !== document.body.dataset.head) look(); });
    live.addEventListener("tick", look);
    addEventListener("pagehide", () => live.close());
  }
  // A browser that keeps nothing (a private window) says so: then paper.
  function lost(section) { section.querySelector("[data-how]").textContent = "This browser keeps nothing: ticks are gone when the page is closed. Mark them on paper."; }

  function wall(section) {
    const pieces = JSON.parse(section.querySelector("script").textContent), key = section.dataset.wall, to = section.dataset.send;
    // With a server its ticks count, and over them what waits here to be sent; else those that are kept here.
    const done = to ? {} : read(key, {}), cutTo = outline => (outline || "").replace(/^\S* ?/, "");
    function fresh(pieces) {
      if (!to) return;
      for (const p of pieces) if (p.Done) done[p.Tick] = p.Hash; else delete done[p.Tick];
      for (const t of read("dryfit-unsent " + to, [])) if (t.Done) done[t.Piece] = t.Outline; else delete done[t.Piece];
    }
    fresh(pieces);
    const is = p => done[p.Tick] === p.Hash || (!!cutTo(done[p.Tick]) && cutTo(done[p.Tick]) === cutTo(p.Hash));
    let at = 0;
    const forward = from => { for (let i = 0; i < pieces.length; i++) { const k = (from + i) % pieces.length; if (!is(pieces[k])) return k; } return -1; };
    at = forward(0);
    function words(p) {
      if (p.Whole) return "whole tile";
      return [p.Cut ? "cut to " + p.Cut : "", p.Holes ? "holes: " + p.Holes : "", p.Keep ? "keep " + p.Keep : ""].filter(Boolean).join("; ");
    }
    function shape(p) { return section.querySelector("#" + CSS.escape(p.ID)); }
    function show() {
      const left = pieces.filter(p => !is(p)).length;
      section.querySelector("[data-next]").textContent = at < 0 ? "All set" : pieces[at].Address;
      section.querySelector("[data-how]").textContent = at < 0 ? "Every piece of this wall is ticked." : words(pieces[at]) + ". " + left + " to go.";
      for (const p of pieces) { const e = shape(p); if (e) { e.classList.toggle("set", is(p)); e.classList.toggle("now", at >= 0 && p === pieces[at]); } }
      section.querySelector("[data-set]").disabled = at < 0;
    }
    function mark(p, on) { if (on) done[p.Tick] = p.Hash; else delete done[p.Tick]; if (to) send(to, p.Tick, p.Hash, on); else if (!write(key, done)) lost(section); }
    let last = [];
    section.querySelector("[data-set]").addEventListener("click", () => { if (at < 0) return; mark(pieces[at], true); last.push(at); at = forward(at); show(); });
    section.querySelector("[data-back]").addEventListener("click", () => { if (!last.length) return; at = last.pop(); mark(pieces[at], false); show(); });
    section.querySelector("[data-skip]").addEventListener("click", () => { if (at < 0) return; at = forward(at + 1); show(); });
    section.addEventListener("click", e => {
      const path = e.target.closest ? e.target.closest(".piece") : null;
      const k = path ? pieces.findIndex(p => p.ID === path.id) : -1;
      if (k >= 0) { at = k; show(); }
    });
    show();
    if (to) follow(text => {
      const page = new DOMParser().parseFromString(text, "text/html"), theirs = page.querySelector("[data-wall] script");
      if (!theirs || page.body.dataset.head !== document.body.dataset.head) { location.reload(); return; } // ticks that wait are kept on this device
      fresh(JSON.parse(theirs.textContent));
      if (at >= 0 && is(pieces[at])) at = forward(at);
      show();
    });
    if (to) { deliver(to); addEventListener("online", () => deliver(to)); setInterval(() => deliver(to), 15000); }
  }
  document.querySelectorAll("[data-wall]").forEach(wall);

  // Where the browser lets a page keep the screen on it does; over plain http it does not, and the page says that.
  const says = document.querySelector("[data-wake]");
  async function wake() {
    try { await navigator.wakeLock.request("screen"); if (says) says.textContent = "The screen stays on while this page is in sight."; } catch { /* the page says so already */ }
  }
  if (navigator.wakeLock && document.body.classList.contains("atwall")) { wake(); document.addEventListener("visibilitychange", () => { if (!document.hidden) wake(); }); }
})();
