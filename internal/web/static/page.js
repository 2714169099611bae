// What makes the pages quick: saving while typing, following the other person, moving a pattern. Every page works without.
"use strict";
document.documentElement.classList.add("js");
const touch = navigator.maxTouchPoints > 0 || matchMedia("(any-pointer: coarse)").matches;
document.documentElement.classList.toggle("touch", touch);
const body = document.body, room = body.dataset.room;
const here = () => location.pathname + location.search;
const told = document.getElementById("told");
let hush;
function tell(words) { told.textContent = words; told.hidden = !words; clearTimeout(hush); hush = setTimeout(() => { told.hidden = true; }, 6000); }

// Parts of a page are put in the place of those that stand, but never under a person's fingers.
function swap(html, preview) {
  const page = new DOMParser().parseFromString(html, "text/html");
  if (!preview && gone(page)) { anew(); return; }
  if (page.body.dataset.head) body.dataset.head = page.body.dataset.head;
  for (const part of document.querySelectorAll("[data-part]")) {
    const fresh = part.isConnected && part.id ? page.getElementById(part.id) : null;
    if (!fresh || (part.id !== "face" && fresh.outerHTML === part.outerHTML)) continue;
    if (part === document.activeElement) { part.replaceChildren(...fresh.childNodes); continue; }
    if (part.contains(document.activeElement)) continue;
    if (part.tagName === "DETAILS") fresh.open = part.open;
    part.replaceWith(fresh);
  }
  for (const fresh of page.querySelectorAll("main input[id], main select[id]")) {
    const mine = document.getElementById(fresh.id);
    if (!mine || mine === document.activeElement || mine.dataset.unsaved || mine.name.startsWith("new.") || mine.type === "radio" || mine.type === "checkbox" || mine.type === "file") continue;
    if (mine.value !== fresh.value) mine.value = fresh.value;
    mine.toggleAttribute("aria-invalid", fresh.hasAttribute("aria-invalid"));
  }
  for (const b of document.querySelectorAll('input[name="base"]')) b.value = body.dataset.head;
  dress();
}

// An input that is gone belongs to a thing that was renamed or taken out: the page is then loaded anew, once nobody types
// in it. Until then what is typed goes out as meant for the revision that the page shows.
function gone(page) {
  return [...document.querySelectorAll("main form input[id], main form select[id]")].some(i => i.name.includes('["') && !page.getElementById(i.id) && !i.closest("[data-part]")); // a part brings its own inputs
}
let old = false;
function anew() {
  if (busy()) { if (!old) tell("Names on this page have changed. It is loaded anew when you have typed."); old = true; return; }
  line.then(() => { if (busy()) old = true; else location.reload(); });
}
function busy() { return document.activeElement?.matches("main input, main select, main textarea"); }
document.addEventListener("focusout", () => { if (old) setTimeout(() => { if (!busy()) anew(); }); });

async function post(address, fields) {
  const answer = await fetch(address, { method: "POST", body: new URLSearchParams({ back: here(), ...fields }) });
  const html = await answer.text();
  post.status = answer.status;
  if (answer.status === 409 && fields.preview) return; // it is told once the person has typed to the end
  if (answer.status === 409) { document.open(); document.write(html); document.close(); return; }
  if (answer.ok || answer.status === 422) return html;
  const words = new DOMParser().parseFromString(html, "text/html").querySelector("main .said");
  throw new Error(words ? words.textContent : html);
}

// Typing: what is typed is shown at once where the form says so, and kept when the person leaves the input.
// A form that adds a reading shows it while it is typed, and is empty for the next one when it is kept.
document.addEventListener("submit", async e => {
  const form = e.target.closest("[data-another]");
  if (!form) return;
  e.preventDefault();
  clearTimeout(typing); turn++;
  try {
    const html = await post(form.action, { ...Object.fromEntries(new FormData(form)), base: body.dataset.head });
    if (!html) return;
    swap(html);
    if (post.status === 422) return; // refused: what was typed stays
    const own = [...form.querySelectorAll('[name^="new."]')];
    own.forEach(i => { i.value = ""; });
    own[0].focus();
  } catch (err) { tell("Not saved: " + err.message); }
});
let typing, turn = 0, line = Promise.resolve();
function value(input) { return { [input.name]: input.value, base: input.dataset.base || body.dataset.head }; }
document.addEventListener("focusin", e => { if (e.target.form && e.target.form.hasAttribute("data-live")) e.target.dataset.base = body.dataset.head; });
document.addEventListener("input", e => {
  const form = e.target.form;
  if (!form || !form.matches("[data-preview], [data-another]") || e.target.tagName !== "INPUT") return;
  clearTimeout(typing);
  const mine = ++turn;
  typing = setTimeout(async () => {
    try { const html = await post(form.action, { ...(form.matches("[data-another]") ? Object.fromEntries(new FormData(form)) : value(e.target)), preview: "1" }); if (html && mine === turn) swap(html, true); } catch { /* the next letter tries again */ }
  }, 140);
});
document.addEventListener("change", async e => {
  const form = e.target.form;
  if (!form || !form.hasAttribute("data-live") || !e.target.name) return;
  clearTimeout(typing); turn++;
  const fields = value(e.target);
  const mine = e.target.dataset.unsaved = String(turn);
  line = line.then(async () => { // one after the other, in the order in which they were typed
    try { const html = await post(form.action, fields); if (e.target.dataset.unsaved === mine) delete e.target.dataset.unsaved; if (html) { swap(html); if (e.target.name.startsWith("again:")) e.target.value = ""; } }
    catch (err) { tell("Not saved: " + err.message); }
  });
});
document.addEventListener("submit", e => { if (e.target.hasAttribute("data-live") && !e.submitter?.name) e.preventDefault(); });

// Following: another person's change brings this page up to date.
async function refresh() {
  const answer = await fetch(here());
  if (answer.ok) swap(await answer.text());
}
if (room && window.EventSource) {
  const live = new EventSource(room + "/live");
  live.addEventListener("head", e => { if (Number(e.data) > Number(body.dataset.head)) refresh(); });
  live.addEventListener("tick", () => { if (document.querySelector("[data-tick]")) location.pathname.endsWith("/cut") && followTicks(); });
  live.addEventListener("photo", () => { if (document.querySelector("[data-photos]")) refresh(); });
  let lost = false; // while there was no connection anything may have changed
  live.onerror = () => { lost = true; tell("No connection to the rooms. What you see may be old."); };
  live.onopen = () => { told.hidden = true; if (lost) { lost = false; refresh(); } };
  addEventListener("pagehide", () => live.close());
}
async function followTicks() {
  const page = new DOMParser().parseFromString(await (await fetch(here())).text(), "text/html");
  for (const fresh of page.querySelectorAll("[data-tick]")) {
    const mine = document.querySelector(`[data-tick="${CSS.escape(fresh.dataset.tick)}"]`);
    if (mine) mine.checked = fresh.hasAttribute("checked");
  }
}

// Moving a pattern: one request at a time, the newest place wins.
let moving = null, asked = false, kept;
function place() { const f = document.getElementById("face"); return f && f.dataset.scale ? f : null; }
async function follow() {
  if (asked || !moving) return;
  asked = true;
  while (moving && moving.dirty) {
    moving.dirty = false;
    const { since } = moving;
    try { const html = await post(room + "/pin", { ...moving.fields(), preview: "1" }); if (html && moving) { swap(html, true); pictured(since); } } catch (err) { tell(err.message); }
  }
  asked = false;
  if (moving && moving.done) keep();
}
// How long it took from the hand to the picture is kept in the browser's own timings, for whoever measures.
function pictured(since) { requestAnimationFrame(() => setTimeout(() => performance.measure("pattern followed", { start: since, end: performance.now() }))); }
async function keep() {
  const m = moving; moving = null;
  if (!m || (!m.dx && !m.dy)) return;
  try { const html = await post(room + "/pin", m.fields()); if (html) swap(html); await refresh(); } catch (err) { tell("Not saved: " + err.message); }
}
function start(face) {
  const base = body.dataset.head;
  moving = { dx: 0, dy: 0, dirty: false, done: false, fields: () => ({ base, face: face.dataset.face, field: face.dataset.field, dx: String(Math.round(moving ? moving.dx : 0)), dy: String(Math.round(moving ? moving.dy : 0)) }) };
  const m = moving;
  m.fields = () => ({ base, face: face.dataset.face, field: face.dataset.field, dx: String(Math.round(m.dx)), dy: String(Math.round(m.dy)) });
}
document.addEventListener("pointerdown", e => {
  const face = e.target.closest && e.target.closest("#face[data-scale]");
  if (!face || e.button || (e.pointerType === "touch" && !face.classList.contains("byhand"))) return;
  const box = face.querySelector("svg").getBoundingClientRect(), seen = face.querySelector("svg").viewBox.baseVal;
  const um = seen.width / Math.min(box.width, box.height * seen.width / seen.height) * 1000 * Number(face.dataset.scale);
  const x = e.clientX, y = e.clientY;
  let far = false;
  function move(e) {
    if (!far && Math.hypot(e.clientX - x, e.clientY - y) < 5) return;
    if (!far) { far = true; start(face); face.dataset.moved = "1"; }
    moving.dx = (e.clientX - x) * um; moving.dy = -(e.clientY - y) * um; moving.dirty = true; moving.since = e.timeStamp;
    e.preventDefault();
    follow();
  }
  function up() {
    removeEventListener("pointermove", move); removeEventListener("pointerup", up); removeEventListener("pointercancel", up);
    if (!far) return;
    moving.done = true;
    if (!asked) keep();
    setTimeout(() => { delete place()?.dataset.moved; }, 0);
  }
  addEventListener("pointermove", move); addEventListener("pointerup", up); addEventListener("pointercancel", up);
});
document.addEventListener("keydown", e => {
  const face = e.target.id === "face" ? place() : null;
  const way = { ArrowLeft: [-1, 0], ArrowRight: [1, 0], ArrowUp: [0, 1], ArrowDown: [0, -1] }[e.key];
  if (!face || !way) return;
  e.preventDefault();
  if (!moving) start(face);
  const by = Number(face.dataset.step) * (e.shiftKey ? 4 : 1);
  moving.dx += way[0] * by; moving.dy += way[1] * by; moving.dirty = true; moving.since = e.timeStamp;
  clearTimeout(kept);
  kept = setTimeout(() => { if (moving) { moving.done = true; if (!asked) keep(); } }, 600);
  follow();
});
document.addEventListener("click", async e => {
  const hand = e.target.closest("[data-hand]");
  if (hand) { byhand = !byhand; dress(); return; }
  const b = e.target.closest(".pad button[name]");
  if (b) {
    e.preventDefault();
    const f = Object.fromEntries(new FormData(b.form));
    try { const html = await post(b.form.action, { ...f, [b.name]: b.value, base: body.dataset.head }); if (html) swap(html); const again = document.querySelector(`.pad button[name="${b.name}"][value="${b.value}"]`); if (again) again.focus(); } catch (err) { tell("Not saved: " + err.message); }
    return;
  }
  const show = e.target.closest("[data-show]"), piece = e.target.closest("#face .piece");
  if (show) tap(show.dataset.show);
  else if (piece && !place()?.dataset.moved) tap(piece.id);
});

// A tap on a tile shows its cut.
let chosen = "";
function tap(id) {
  chosen = id;
  const row = document.querySelector(`tr[data-piece="${CSS.escape(id)}"]`), out = document.getElementById("piece");
  if (!row || !out) return;
  const heads = [...row.closest("table").tHead.rows[0].cells].map(c => c.textContent), facts = [...row.cells].map(c => c.textContent.trim());
  const h = document.createElement("h2"), dl = document.createElement("dl");
  h.textContent = "Piece " + facts[0];
  facts.forEach((f, i) => { if (i && f) { const dt = document.createElement("dt"), dd = document.createElement("dd"); dt.textContent = heads[i]; dd.textContent = f; dl.append(dt, dd); } });
  if (row.dataset.exact) { const dt = document.createElement("dt"), dd = document.createElement("dd"); dt.textContent = "Exact"; dd.textContent = row.dataset.exact; dl.append(dt, dd); }
  out.replaceChildren(h, dl);
  mark();
}
function mark() {
  document.querySelectorAll("#face .chosen, tr.chosen").forEach(x => x.classList.remove("chosen"));
  if (!chosen) return;
  document.getElementById(chosen)?.classList.add("chosen");
  document.querySelector(`tr[data-piece="${CSS.escape(chosen)}"]`)?.classList.add("chosen");
}

// Lists can be sorted by each of their heads.
function sortable(table) {
  if (table.dataset.sorts || !table.tHead) return;
  table.dataset.sorts = "1";
  [...table.tHead.rows[0].cells].forEach((th, i) => {
    if (!th.textContent.trim()) return;
    const b = document.createElement("button");
    b.type = "button"; b.append(...th.childNodes); th.append(b);
    b.addEventListener("click", () => {
      const up = th.getAttribute("aria-sort") !== "ascending";
      [...table.tHead.rows[0].cells].forEach(c => c.removeAttribute("aria-sort"));
      th.setAttribute("aria-sort", up ? "ascending" : "descending");
      const of = row => { const box = row.cells[i].querySelector("input"); return box ? (box.checked ? "1" : "0") : row.cells[i].textContent.trim(); };
      const rows = [...table.tBodies[0].rows].sort((a, c) => of(a).localeCompare(of(c), "en", { numeric: true }) * (up ? 1 : -1));
      table.tBodies[0].append(...rows);
    });
  });
}

// Ticks go the same way as at the wall: kept here first, then sent.
if (document.querySelector("[data-tick]")) {
  const script = document.createElement("script");
  script.src = "/static/wall.js";
  document.head.append(script);
  const to = room + "/ticks";
  document.addEventListener("change", e => {
    if (!e.target.dataset.tick) return;
    window.dryfitTick.send(to, e.target.dataset.tick, e.target.dataset.outline, e.target.checked);
    setTimeout(() => { const n = window.dryfitTick.unsent(to); if (n) tell(n + " ticks wait on this device for a connection."); }, 1500);
  });
  script.addEventListener("load", () => { window.dryfitTick.deliver(to); setInterval(() => window.dryfitTick.deliver(to), 15000); });
}

// The keypad: figures for one thumb, fractions of an inch for the other.
const pad = document.getElementById("keypad");
let into = null;
if (pad && touch) {
  document.querySelectorAll("input[data-tape]").forEach(i => { i.inputMode = "none"; });
  document.addEventListener("focusin", e => {
    into = e.target.matches("input[data-tape]:not([data-letters])") ? e.target : null;
    pad.hidden = !into;
    if (into) requestAnimationFrame(() => into && into.scrollIntoView({ block: "nearest" }));
  });
  pad.addEventListener("pointerdown", e => e.preventDefault());
  pad.addEventListener("click", e => { const k = e.target.dataset.key; if (k && into) press(k); });
}
function press(k) {
  const v = into.value;
  if (k === "next") {
    const all = [...document.querySelectorAll("input[data-tape]")].filter(i => i.offsetParent);
    const next = all[all.indexOf(into) + 1];
    if (next) next.focus(); else into.blur();
    return;
  }
  if (k === "letters") { const i = into; i.inputMode = "text"; i.dataset.letters = "1"; i.blur(); i.focus(); return; }
  if (k === "-") into.value = v.startsWith("-") ? v.slice(1) : "-" + v;
  else if (k === "mm") into.value = v ? v.replace(/ ?mm$/, "") + " mm" : v;
  else if (k === "back") into.value = v.slice(0, -1);
  else if (k === "ft") into.value = v ? v + "' " : v;
  else if (k.includes("/")) { const whole = v.replace(/-?\d*\/\d*$/, "").trimEnd(); into.value = /\d$/.test(whole) ? whole + "-" + k : (whole ? whole + " " : "") + k; }
  else into.value = v + k;
  into.dispatchEvent(new Event("input", { bubbles: true }));
  typed = into;
}
let typed = null;
document.addEventListener("focusout", e => { if (e.target === typed) { typed = null; e.target.dispatchEvent(new Event("change", { bubbles: true })); } });

document.querySelector(".tabs [aria-current]")?.scrollIntoView({ block: "nearest", inline: "center" });

let byhand = false;
function dress() {
  place()?.classList.toggle("byhand", byhand);
  document.querySelector("[data-hand]")?.setAttribute("aria-pressed", byhand);
  document.querySelectorAll("table.sortable").forEach(sortable); mark(); }
dress();
