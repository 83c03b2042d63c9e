// The line to the laboratory: starts it, says in words when it is lost, and takes it up again by itself, for ever.
import { count, flush, hold, tellAgain } from "./keep.js";
import { own } from "./own.js";

const silence = 15000, heartbeat = 5000;               // without a word of the server for so long the line is dead
const first = 1000, strong = 10000, patience = 4000;   // when the strip comes, when it grows, how long an answer may take
const pauses = [1, 1, 2, 3, 5, 8, 10].map(s => s * 1000);
const stillness = 2000, stillest = 30000;              // how long the hands must rest before the page opens anew

const strip = document.getElementById("line");
const part = name => strip.querySelector(`[data-line-${name}]`);
let downAt = 0, backAt = 0, nextAt = 0, tries = 0, lastKey = 0, trying = false, anew = 0, answered = "";

export const isDown = () => downAt > 0;

const clock = at => new Date(at).toLocaleTimeString("en-GB");
const within = (work, time) => Promise.race([work, new Promise((_, late) => setTimeout(late, time))]);
const ask = () => fetch("/health/ready", { cache: "no-store", signal: AbortSignal.timeout(patience) }).catch(() => null);

function lost() {
  if (downAt) return;
  [downAt, nextAt, tries, anew, answered] = [Date.now(), 0, 0, 0, ""];
  hold(true);
  show();
}

function up() {
  const was = downAt;
  [downAt, backAt] = [0, Date.now()];
  hold(false);
  document.getElementById("blazor-error-ui").style.display = "none";
  tellAgain();
  if (Date.now() - was < first && strip.hidden) backAt = 0;
  show();
}

async function attempt() {
  if (!downAt || trying || anew) return;
  trying = true;
  try {
    const answer = await ask();
    answered = answer && !answer.ok ? "The laboratory is starting. " : "";
    if (answer?.ok && !await reconnect()) anew = Date.now();
  } finally {
    trying = false;
    nextAt = Date.now() + pauses[Math.min(tries++, pauses.length - 1)];
    show();
  }
}

// False where it can only open anew: the laboratory does not know the page any more, or nobody is signed in on it.
async function reconnect() {
  const back = await within(Blazor.reconnect(), 2 * patience).catch(() => null);
  if (back !== null && back !== undefined) return back;
  const session = await fetch("/session/keep", { method: "POST", headers: own, signal: AbortSignal.timeout(patience) }).catch(() => null);
  return session?.status !== 401;
}

// The laboratory no longer knows this page: it opens anew, but not under moving hands.
async function openAnew() {
  const now = Date.now();
  if (trying || !(document.hidden || now - lastKey > stillness || now - anew > stillest)) return;
  trying = true;
  await flush();
  if ((await ask())?.ok) return location.reload();
  [trying, anew] = [false, 0];
}

// --- In words

function show() {
  const now = Date.now();
  const visible = downAt ? now - downAt >= first : now - backAt < 8000;
  if (strip.hidden === visible) strip.hidden = !visible;
  document.body.classList.toggle("line-shown", visible);
  if (!visible) return;
  strip.classList.toggle("severe", downAt > 0 && (now - downAt >= strong || anew > 0));
  strip.classList.toggle("up", !downAt);
  strip.dataset.seconds = downAt ? Math.floor((now - downAt) / 1000) : "";
  strip.dataset.state = !downAt ? "up" : anew ? "anew" : "down";
  put("what", what());
  put("safe", downAt ? safe() : "");
  put("kept", downAt ? here() : "");
  put("next", downAt ? next(now) : "");
  part("retry").hidden = !downAt;
  if (!downAt) put("refused", "");
}

// An alert is read out whenever it changes: only when it does.
function put(name, words) {
  if (part(name).textContent !== words) part(name).textContent = words;
}

function what() {
  if (!downAt) return `Connected again at ${clock(backAt)}. What you typed meanwhile has been sent.`;
  return anew
    ? "The laboratory is there again, and this page has to open anew."
    : `No connection to the laboratory since ${clock(downAt)}.`;
}

function safe() {
  const saved = document.querySelector("[data-saved-time]")?.dataset.savedTime;
  return saved ? `Your draft as saved at ${saved} is safe in the laboratory.` : "What was reported, registered or signed is safe in the laboratory.";
}

function here() {
  const fields = count();
  return fields === 0 ? "Nothing that you typed is missing there. You can go on typing; nothing can be reported or registered."
    : `Kept only in this browser so far: ${fields} ${fields === 1 ? "field" : "fields"}. You can go on typing; it is sent by itself. Nothing can be reported or registered until then.`;
}

function next(now) {
  if (anew) return "It opens as soon as you pause typing, and puts everything back.";
  const left = Math.ceil((nextAt - now) / 1000);
  return answered + (trying || left <= 0 ? "Trying now …" : `Next try in ${left} s.`);
}

// --- While it is down nothing is sent: what is typed is kept, what would act is refused in words.

const allowed = target => target.closest?.("#line, #kept, .ended, .rail-emergency, dialog form[method=dialog]");

function withhold(event) {
  if (!downAt || allowed(event.target)) return;
  const acts = event.type === "submit" || (event.type === "click" && event.target.closest("button, a[href]"));
  if (acts) {
    event.preventDefault();
    put("refused", "That was not done: there is no connection. Do it again when it is back.");
  }
  event.stopImmediatePropagation();
}

if (strip) {
  addEventListener("keydown", () => { lastKey = Date.now(); }, true);
  for (const type of ["input", "change", "click", "submit"]) addEventListener(type, withhold, true);
  part("retry").addEventListener("click", () => anew ? location.reload() : attempt());
  for (const sign of ["online", "pageshow"]) addEventListener(sign, attempt);
  document.addEventListener("visibilitychange", () => { if (!document.hidden) attempt(); });
  setInterval(() => {
    if (anew) openAnew();
    else if (downAt && Date.now() >= nextAt) attempt();
    show();
  }, 250);
  Blazor.start({
    circuit: {
      configureSignalR: line => line.withServerTimeout(silence).withKeepAliveInterval(heartbeat),
      reconnectionHandler: { onConnectionDown: lost, onConnectionUp: up },
    },
  });
}
