// The bench by keyboard. Typing stays in the browser; a field tells the server when it is left or after a pause.
const pause = 600;
let root = null, timer = 0;

const key = () => `bench/${root?.dataset.draft}`;
const fields = () => [...root.querySelectorAll("[data-step]")].filter(f => !f.disabled && f.offsetParent !== null);

function copy() {
  return JSON.parse(sessionStorage.getItem(key()) ?? "{}");
}

function tell(field) {
  clearTimeout(timer);
  if (field?.matches("input[type=text]")) field.dispatchEvent(new Event("change", { bubbles: true }));
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
  const next = all[at + by];
  if (!next) return;
  next.focus();
  if (next.matches("input[type=text]")) next.select();
}

function pressed(event) {
  const field = event.target.closest("[data-step]");
  if (!field) return;
  if (event.key === "Enter" && event.ctrlKey) {
    tell(field);
  } else if (event.key === "Escape" || (event.key === "Enter" && event.shiftKey)) {
    event.preventDefault();
    go(field, -1);
  } else if (event.key === "Enter" && field.tagName !== "BUTTON") {
    event.preventDefault();
    if (field.type === "radio" && !fields().some(o => o.name === field.name && o.checked)) field.click();
    go(field, 1);
  } else if (field.type === "radio" && /^[1-9]$/.test(event.key)) {
    const choice = fields().filter(o => o.name === field.name).find(o => o.dataset.number === event.key);
    const typed = performance.now();
    lastDigit = typed;
    // A scanner's digits come in a burst: only a lone one is a choice.
    setTimeout(() => { if (choice && lastDigit === typed) { choice.click(); choice.focus(); } }, 120);
  }
  if (event.key.length === 1) lastDigit = /^[1-9]$/.test(event.key) ? lastDigit : 0;
}
let lastDigit = 0;

function typed(event) {
  const field = event.target;
  if (!field.matches("[data-step][type=text]")) return;
  sessionStorage.setItem(key(), JSON.stringify({ ...copy(), [field.id]: field.value }));
  clearTimeout(timer);
  timer = setTimeout(() => tell(field), pause);
}

export function attach(bench, goesOn) {
  if (root !== bench) {
    root = bench;
    root.addEventListener("keydown", pressed);
    root.addEventListener("input", typed);
  }
  resend();
  root.dataset.listening = "yes";
  const active = document.activeElement;
  if (goesOn || !active || active === document.body || active.tagName === "H1") stops()[0]?.focus();
}

// What never reached the server, from before a lost connection or a closed page.
function resend() {
  for (const [id, value] of Object.entries(copy())) {
    const field = document.getElementById(id);
    if (!field || !root.contains(field)) continue;
    field.value = value;
    tell(field);
  }
}
document.getElementById("components-reconnect-modal")?.addEventListener("components-reconnect-state-changed", event => {
  if (event.detail.state === "hide" && root?.isConnected) resend();
});

export function saved() {
  if (root) sessionStorage.removeItem(key());
}
