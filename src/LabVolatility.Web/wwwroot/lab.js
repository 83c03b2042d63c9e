// Runs on every page, with and without a circuit: clock, keys, sign-in help. Typing, line, session and lists: see the modules.
import "./keep.js";
import "./line.js";
import "./rows.js";
import "./session.js";

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
  if (event.target.closest("[data-reload]")) location.reload();
});
