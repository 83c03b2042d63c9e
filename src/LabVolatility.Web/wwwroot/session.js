// A session lives as long as somebody works in it; before it ends, the page says so, and after it goes on where it was.
import { holds } from "./drawer.js";
import { tellAgain } from "./keep.js";
import { own } from "./own.js";

const between = 4 * 60 * 1000, warning = 60 * 1000;
const strip = document.getElementById("stay");
let lastDeed = Date.now(), lastKept = Date.now();

const session = () => document.querySelector("[data-session-token]")?.dataset;
const clock = at => new Date(at).toLocaleTimeString("en-GB");

function deed() {
  lastDeed = Date.now();
  if (session() && (!strip.hidden || lastDeed - lastKept > between)) keep();
}

function keep() {
  lastKept = Date.now();
  strip.hidden = true;
  fetch("/session/keep", { method: "POST", headers: { ...own, "X-Lab-Session": session().sessionToken } }).catch(() => { lastKept = 0; });
}

// Nobody has to guess when: from a minute before, any key keeps the session.
function look() {
  const data = session(), ended = document.querySelector(".ended");
  if (ended && !ended.open) ended.showModal(); // above an open dialog as well, which stays as it is below
  if (!data || ended) return void (strip.hidden = true);
  const ends = lastKept + Number(data.sessionIdle) * 1000, left = ends - Date.now();
  if (left > warning) return;
  if (lastDeed > lastKept) return keep();
  if (strip.hidden) {
    strip.hidden = false;
    strip.querySelector("[data-stay-what]").textContent =
      `Nothing has been done here for a while: the session ends at ${clock(ends)}. Any key keeps it. What you typed stays in any case.`;
  }
  strip.querySelector("[data-stay-left]").textContent = left > 0 ? `${Math.ceil(left / 1000)} s left.` : "";
}

// The same person has signed in again in another tab: this page goes on.
async function renew() {
  const ended = document.querySelector(".ended");
  if (!ended) return;
  const answer = await fetch("/session/renew", { method: "POST", headers: { "X-Lab-Page": session().sessionToken } }).catch(() => null);
  if (answer?.ok) tellAgain();
}

if (strip) {
  for (const type of ["keydown", "pointerdown"]) addEventListener(type, deed, { passive: true });
  document.addEventListener("visibilitychange", () => { if (!document.hidden) renew(); });
  setInterval(look, 1000);
}

// On the way back in: say that the typing is still there.
const note = document.querySelector("[data-kept-note]");
if (note) note.hidden = !holds(new URLSearchParams(location.search).get("return")?.split("?")[0] ?? "");
