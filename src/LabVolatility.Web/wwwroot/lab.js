// Runs on every page, with and without a circuit: clock, keys, sign-in help, session, connection.
const own = { "X-Lab-Page": "keep" };

// The laboratory's clock
function tick() {
  for (const clock of document.querySelectorAll("[data-clock]")) {
    const parts = Object.fromEntries(new Intl.DateTimeFormat("en-GB", {
      timeZone: clock.dataset.clock, year: "numeric", month: "2-digit", day: "2-digit", hour: "2-digit", minute: "2-digit", hourCycle: "h23",
    }).formatToParts(new Date()).map(p => [p.type, p.value]));
    const text = `${parts.year}-${parts.month}-${parts.day} ${parts.hour}:${parts.minute}`;
    if (clock.textContent !== text) clock.textContent = text;
  }
}
tick();
setInterval(tick, 1000);

// Ctrl+/ shows the keys. No single letters: a scanner types those.
document.addEventListener("keydown", event => {
  if (event.ctrlKey && event.key === "/") {
    const keys = document.getElementById("keys");
    if (keys && !keys.open) {
      event.preventDefault();
      keys.showModal();
    }
  }
});

document.addEventListener("click", event => {
  const person = event.target.closest("[data-demo-name]");
  if (person) {
    document.getElementById("userName").value = person.dataset.demoName;
    document.getElementById("password").value = person.dataset.demoPassword;
    document.getElementById("sign-in").focus();
    return;
  }
  const summary = event.target.closest("a[data-field]");
  if (summary) {
    event.preventDefault();
    document.getElementById(summary.dataset.field)?.focus();
    return;
  }
  if (event.target.closest("[data-retry]")) retry();
  if (event.target.closest("[data-reload]")) location.reload();
  if (event.target.closest("[data-renew]")) renew();
});

// A session lives as long as somebody works in it.
const between = 4 * 60 * 1000;
let lastKept = Date.now();
for (const deed of ["keydown", "pointerdown"]) {
  document.addEventListener(deed, () => {
    if (Date.now() - lastKept < between || !document.querySelector("[data-interactive=yes]")) return;
    lastKept = Date.now();
    fetch("/session/keep", { method: "POST", headers: own }).catch(() => {});
  }, { passive: true });
}

// After the session has ended and the person has signed in in another tab, this page goes on.
async function renew() {
  const ended = document.querySelector("[data-session-token]");
  if (!ended) return;
  const answer = await fetch("/session/renew", { method: "POST", headers: { "X-Lab-Page": ended.dataset.sessionToken } }).catch(() => null);
  const words = ended.querySelector("[data-session-answer]");
  if (words && !answer?.ok) words.textContent = "Not signed in again yet, or as somebody else. Sign in first, in the new tab.";
}
document.addEventListener("visibilitychange", () => { if (document.visibilityState === "visible") renew(); });

// Connection: say it in words, try again, and come back by itself.
let looking = false;
async function retry() {
  if (looking) return;
  looking = true;
  for (;;) {
    const answer = await fetch("/health/ready", { cache: "no-store" }).catch(() => null);
    if (answer?.ok) {
      const back = await window.Blazor?.reconnect?.().catch(() => false);
      if (!back) location.reload();
      looking = false;
      return;
    }
    await new Promise(done => setTimeout(done, 2000));
  }
}
const banner = document.getElementById("components-reconnect-modal");
banner?.addEventListener("components-reconnect-state-changed", event => {
  if (event.detail.state === "failed" || event.detail.state === "rejected") retry();
});
