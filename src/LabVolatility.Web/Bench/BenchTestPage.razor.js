// The bench by keyboard. Typing stays in the browser; a field tells the server when it is left or after a pause.
import { forget, hasSpot, settle } from "../keep.js";

const pause = 600, oneKey = 120;
let root = null, page = null, timer = 0, before = "", lastDigit = 0;

const fields = () => [...root.querySelectorAll("[data-step]")].filter(f => !f.disabled && f.offsetParent !== null);
const isText = field => field.matches("input[type=text]");

function tell(field) {
  clearTimeout(timer);
  if (isText(field)) field.dispatchEvent(new Event("change", { bubbles: true }));
}

// One stop a group of choices: the chosen one, else the first.
function stops() {
  const seen = new Set();
  return fields().filter(f => {
    if (f.type !== "radio") return true;
    if (seen.has(f.name)) return false;
    seen.add(f.name);
    return true;
  }).map(f => f.type === "radio" ? fields().find(o => o.name === f.name && o.checked) ?? f : f);
}

function go(from, by) {
  const all = stops();
  const at = all.findIndex(f => f === from || (f.type === "radio" && f.name === from.name));
  all[at + by]?.focus();
}

// Escape first restores what stood in the field when it was entered, then goes back.
function escape(field) {
  if (!isText(field) || field.value === before) return go(field, -1);
  field.value = before;
  field.dispatchEvent(new Event("input", { bubbles: true }));
  tell(field);
  field.select();
}

// A scanner's digits come in a burst: only a lone one is a choice.
function choose(field, digit) {
  const choice = fields().filter(o => o.name === field.name).find(o => o.dataset.number === digit);
  const typed = performance.now();
  lastDigit = typed;
  setTimeout(() => {
    if (!choice || lastDigit !== typed) return;
    choice.click();
    choice.focus();
  }, oneKey);
}

function pressed(event) {
  const field = event.target.closest("[data-step]");
  const act = event.ctrlKey && event.key === "Enter" ? () => report(field) : field && deed(event, field);
  if (event.key.length === 1 && !/^[1-9]$/.test(event.key)) lastDigit = 0;
  if (!act) return;
  event.preventDefault();
  act();
}

function report(field) {
  if (field) tell(field);
  document.getElementById("report")?.click();
}

function deed(event, field) {
  const { key, shiftKey } = event;
  if (key === "Escape") return () => escape(field);
  if (key === "Enter" && shiftKey) return () => go(field, -1);
  if (key === "Enter" && field.tagName !== "BUTTON") return () => {
    if (field.type === "radio" && !fields().some(o => o.name === field.name && o.checked)) field.click();
    go(field, 1);
  };
  if (key === "ArrowDown" && isText(field)) return () => go(field, 1);
  if (key === "ArrowUp" && isText(field)) return () => go(field, -1);
  if (key === "F2" && isText(field)) return () => field.setSelectionRange(field.value.length, field.value.length);
  if (field.type === "radio" && /^[1-9]$/.test(key)) return () => choose(field, key);
  return null;
}

// What is typed replaces what stands there.
function entered({ target: field }) {
  if (!field.matches("[data-step]") || !isText(field)) return;
  before = field.value;
  field.select();
}

function typed({ target: field }) {
  if (!field.matches("[data-step][type=text]")) return;
  clearTimeout(timer);
  timer = setTimeout(() => tell(field), pause);
}

// The server answers once all that it was told before is saved.
async function told() {
  const until = Date.now();
  if (await page.invokeMethodAsync("SavedAsync").catch(() => false)) settle(root, until);
}

export const reported = forget;

const isAnswered = stop => isText(stop) ? stop.value !== "" : stop.type === "checkbox" || stop.type === "radio" ? stop.checked : false;

/** To what is to be answered next behind a choice that a scan made. */
export function goOn(choice) {
  const all = stops(), behind = all.slice(all.findIndex(f => f.name === choice) + 1);
  (behind.find(f => !isAnswered(f)) ?? behind[0])?.focus();
}

export function attach(bench, keys, goesOn) {
  page = keys;
  if (root !== bench) {
    root = bench;
    root.addEventListener("keydown", pressed);
    root.addEventListener("focusin", entered);
    root.addEventListener("input", typed);
    root.addEventListener("change", () => setTimeout(told));
  }
  root.dataset.listening = "yes";
  if (hasSpot()) return;
  const active = document.activeElement;
  if (!goesOn && active && active !== document.body && active.tagName !== "H1") return;
  const begin = stops()[0];
  if (begin && isAnswered(begin)) goOn(begin.name);
  else begin?.focus();
}
