// What is typed on a page is kept in this browser until the laboratory has it, and put back when the page opens anew.
import { byName, canHold, caretOf, fill, isKept, labelOf, nameOf, pick, putCaret, valueOf } from "./fields.js";
import * as drawer from "./drawer.js";

const longest = 12 * 60 * 60 * 1000, vanished = 3000, opening = 5000;
const strip = document.getElementById("kept");

let place = location.pathname;
let kept = new Map();                       // typed here: name -> { value, at, told, label }
let waiting = new Map();                    // from before the page opened anew: to be put back
let spot = null, more = {};                 // where the hands were, and how many rows tables had
let spotUntil = 0;                          // a page that opens puts the focus on its heading: until then it is taken back
let back = [], disputed = [];               // put back; saved elsewhere since
let silent = false, held = false, moved = false, acted = false;

// --- Typing

function typed({ target: field, type }) {
  if (silent || !isKept(field)) return;
  const name = nameOf(field), value = valueOf(field), before = kept.get(name);
  const same = before?.value === value;
  kept.set(name, {
    value,
    label: labelOf(field),
    at: same ? before.at : Date.now(),
    told: type === "change" && !held ? Date.now() : same ? before.told : 0,
    field,
  });
  waiting.delete(name);
  acted = false;
  save();
}

function tell(field, entry) {
  silent = true;
  for (const type of ["input", "change"]) field.dispatchEvent(new Event(type, { bubbles: true }));
  silent = false;
  if (entry && !held) entry.told = Date.now();
}

/** Forgets what the laboratory has confirmed: told to it before this moment, and not typed anew since. */
export function settle(root, until) {
  const fields = byName();
  for (const [name, { told }] of kept) {
    if (told && told <= until && root.contains(fields.get(name)?.[0] ?? null)) kept.delete(name);
  }
  save();
}

/** Forgets all of this page: it was acted upon. */
export function forget() {
  [kept, waiting, back] = [new Map(), new Map(), []];
  strip.hidden = true;
  save();
}

/** Says everything again: it may have been typed while nobody listened. */
export function tellAgain() {
  const fields = byName();
  for (const [name, entry] of kept) {
    const field = pick(fields.get(name), entry.value);
    if (field) tell(field, entry);
  }
}

/** While the line is down nothing typed reaches the laboratory. */
export const hold = down => { held = down; };

/** How many fields the laboratory has not confirmed. */
export const count = () => kept.size + waiting.size;

/** Everything typed is in the drawer: the page may be opened anew. */
export const flush = save;

function save() {
  return drawer.put(place, () => {
    const fields = [...waiting, ...kept].map(([name, { value, label, at, told }]) => [name, { value, label, at, told }]);
    return fields.length === 0 ? null : { fields, spot: spotNow() ?? spot, more: rows() };
  });
}

function spotNow() {
  const field = document.activeElement;
  return isKept(field) ? { name: nameOf(field), value: valueOf(field), caret: caretOf(field) } : null;
}

// The button that adds a row names the rows: data-keep-more.
const adders = () => [...document.querySelectorAll("[data-keep-more]")];
const rows = () => Object.fromEntries(adders().map(b => [b.dataset.keepMore, document.querySelectorAll(b.dataset.keepMore).length]));

// --- Putting back

async function open() {
  if (!await drawer.unlock()) return;
  const stored = await drawer.read(place);
  if (!stored) return;
  waiting = new Map(stored.fields.filter(([name, e]) => Date.now() - e.at < longest && !kept.has(name)));
  [spot, more] = [stored.spot, stored.more];
  putBack();
}

function putBack() {
  if (waiting.size === 0 || held || !document.querySelector("[data-interactive=yes]")) return;
  const short = adders().find(b => document.querySelectorAll(b.dataset.keepMore).length < (more[b.dataset.keepMore] ?? 0));
  if (short) return short.click();
  const fields = byName(), told = [];
  for (const [name, entry] of waiting) {
    const field = pick(fields.get(name), entry.value);
    if (!field || !canHold(field, entry.value)) continue;
    waiting.delete(name);
    const shown = fields.get(name).map(valueOf).find(Boolean) ?? "";
    const saved = Number(field.closest("[data-saved-at]")?.dataset.savedAt ?? 0);
    if (shown !== entry.value && shown !== "" && saved > entry.at + drawer.ahead) {
      disputed.push({ name, entry, shown });
      continue;
    }
    kept.set(name, { ...entry, field });
    if (shown === entry.value) continue;
    fill(field, entry.value);
    told.push([field, kept.get(name)]);
    back.push({ name, was: shown, at: entry.at, label: entry.label });
  }
  for (const [field, entry] of told) tell(field, entry);
  if (told.length > 0) spotUntil = Date.now() + opening;
  if (told.length + disputed.length > 0) say();
  takeSpot();
  save();
}

/** True while the focus is on its way back to where the hands were: a page that opens leaves it alone. */
export const hasSpot = () => spot !== null && !moved && (waiting.size > 0 || Date.now() < spotUntil);

// Where the hands were wins over the page's heading, until they move.
function takeSpot() {
  const free = document.activeElement === document.body || document.activeElement?.tagName === "H1";
  const field = hasSpot() && free ? pick(byName().get(spot.name), spot.value) : null;
  if (field) putCaret(field, spot.caret);
}

// --- What the page itself took away or changed is the laboratory's affair.

function sweep() {
  if (location.pathname !== place) return moveOn();
  if (held || document.querySelector(".ended")) return;
  putBack();
  const fields = byName();
  for (const [name, entry] of kept) {
    const field = pick(fields.get(name), entry.value), shown = field ? valueOf(field) : "";
    entry.gone = field ? 0 : entry.gone || Date.now();
    const drawnAnew = field && field !== entry.field;
    if (field) entry.field = field;
    if ((field === document.activeElement && !drawnAnew) || shown === entry.value) continue;
    if (drawnAnew && !acted && canHold(field, entry.value)) {
      fill(field, entry.value); // in the middle of the typing
      tell(field, entry);
    } else if (shown !== "") {
      entry.value = shown;
      save();
    } else if (field || Date.now() - entry.gone > vanished) {
      kept.delete(name);
      save();
    }
  }
}

// Left by a button, which did something with it: the laboratory has it. Left otherwise: it is kept for the return.
function moveOn() {
  if (acted) drawer.put(place, () => null);
  place = location.pathname;
  [kept, waiting, back, disputed, spot, more] = [new Map(), new Map(), [], [], null, {}];
  strip.hidden = true;
  open();
}

// --- In words

const clock = at => new Date(at).toLocaleTimeString("en-GB");

function say() {
  const words = disputed.map(d =>
    `${d.entry.label}: you typed ${d.entry.value} here at ${clock(d.entry.at)}; ${d.shown} was saved elsewhere after that, and stands.`);
  if (back.length > 0)
    words.unshift(`Put back from this browser, typed up to ${clock(Math.max(...back.map(b => b.at)))}: ${back.map(b => b.label).join(", ")}.`);
  strip.querySelector("[role=status]").textContent = words.join(" ");
  strip.querySelector("[data-kept-mine]").hidden = disputed.length === 0;
  strip.querySelector("[data-kept-away]").hidden = back.length === 0;
  strip.hidden = false;
}

function change(name, value, entry) {
  const field = pick(byName().get(name), value);
  if (!field) return;
  if (field.type === "radio" && value === "") field.checked = false;
  else fill(field, value);
  if (entry) kept.set(name, { ...entry, field });
  else kept.delete(name);
  tell(field, entry);
  save();
}

function pressed({ target }) {
  const act = target.closest?.("a[href], button");
  if (act) acted = act.tagName === "BUTTON";
  if (!act?.closest("#kept")) return;
  if (act.matches("[data-kept-mine]")) for (const { name, entry } of disputed.splice(0)) change(name, entry.value, entry);
  if (act.matches("[data-kept-away]")) for (const { name, was } of back.splice(0)) change(name, was, null);
  strip.hidden = true;
}

if (strip) {
  for (const type of ["input", "change"]) addEventListener(type, typed, true);
  for (const deed of ["keydown", "pointerdown"]) addEventListener(deed, () => { moved = true; }, true);
  addEventListener("focusin", () => setTimeout(takeSpot));
  addEventListener("click", pressed, true);
  addEventListener("popstate", () => { acted = false; });
  new MutationObserver(putBack).observe(document.body, { childList: true, subtree: true });
  setInterval(sweep, 500);
  open();
}
