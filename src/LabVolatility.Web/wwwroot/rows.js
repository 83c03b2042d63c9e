// Lists by keyboard: a table with data-rows is one tab stop; arrows go from row to row, Enter opens, right and left reach
// the links of a row. Back and reload find the same row and the same height of the page.
const listed = "table[data-rows]", prefix = "lab/place/", searching = 5000;

let current = null, at = 0;                 // the row in hand, and its place in the list
let wanted = null, wantedUntil = 0;         // where the page was left

const actsOf = row => [...row.querySelectorAll("a[href], button")];
const rowsOf = table => [...table.tBodies].flatMap(body => [...body.rows]).filter(row => actsOf(row).length > 0);
const rowOf = target => target.closest?.("tr")?.closest(listed) && rowsOf(target.closest(listed)).find(row => row.contains(target));

function prepare() {
  for (const table of document.querySelectorAll(listed)) {
    if (table.getAttribute("role") !== "grid") table.setAttribute("role", "grid");
    const rows = rowsOf(table), stop = rows.find(row => row.tabIndex === 0) ?? rows[0];
    for (const row of rows) {
      if (!row.hasAttribute("tabindex") || (row !== stop && row.tabIndex === 0)) row.tabIndex = row === stop ? 0 : -1;
      for (const act of actsOf(row)) if (act.tabIndex !== -1) act.tabIndex = -1;
    }
  }
  if (current && !current.isConnected) goOn();
  if (wanted) comeBack();
}

// The row in hand was taken away by the page: the one that stands there now takes its place.
function goOn() {
  const lost = document.activeElement === document.body;
  const table = document.querySelector(`${listed}#${CSS.escape(current.list)}`);
  const rows = table ? rowsOf(table) : [];
  current = null;
  if (lost && rows.length > 0) take(rows[Math.min(at, rows.length - 1)]);
}

function take(row, options) {
  for (const other of rowsOf(row.closest(listed))) if (other.tabIndex === 0) other.tabIndex = -1;
  row.tabIndex = 0;
  row.focus(options);
}

function step(row, key) {
  const rows = rowsOf(row.closest(listed)), here = rows.indexOf(row);
  const page = Math.max(1, Math.floor(innerHeight / 2 / row.offsetHeight));
  const to = { ArrowDown: here + 1, ArrowUp: here - 1, Home: 0, End: rows.length - 1, PageDown: here + page, PageUp: here - page }[key];
  if (to !== undefined) take(rows[Math.max(0, Math.min(to, rows.length - 1))]);
  return to !== undefined;
}

// Within a row: its links and buttons, and left of them the row itself.
function across(row, target, key) {
  const stops = [row, ...actsOf(row)], to = stops.indexOf(target) + (key === "ArrowRight" ? 1 : -1);
  if (key === "Escape") row.focus();
  else stops[Math.max(0, Math.min(to, stops.length - 1))].focus();
}

addEventListener("keydown", event => {
  wanted = null;
  const row = rowOf(event.target);
  if (!row || event.ctrlKey || event.altKey || event.metaKey || event.shiftKey) return;
  if (event.key === "Enter" && event.target === row) (row.querySelector("[data-opens], a.strong") ?? actsOf(row)[0]).click();
  else if (["ArrowRight", "ArrowLeft"].includes(event.key) || (event.key === "Escape" && event.target !== row)) across(row, event.target, event.key);
  else if (!step(row, event.key)) return;
  event.preventDefault();
});

addEventListener("focusin", event => {
  const row = rowOf(event.target);
  if (row) {
    current = row;
    current.list = row.closest(listed).id;
    at = rowsOf(row.closest(listed)).indexOf(row);
    remember();
  } else if (wanted?.found) {
    comeBack(); // the heading took the focus of a page that came back
  }
});

// --- Back and reload

const here = () => prefix + location.pathname + location.search;

function remember() {
  if (!wanted && document.querySelector(listed))
    sessionStorage.setItem(here(), JSON.stringify({ y: scrollY, row: current?.isConnected ? actsOf(current)[0]?.getAttribute("href") ?? null : null }));
}

function look() {
  wanted = JSON.parse(sessionStorage.getItem(here()) ?? "null");
  wantedUntil = Date.now() + searching;
}

function comeBack() {
  if (Date.now() > wantedUntil) wanted = null;
  const table = wanted && document.querySelector(listed);
  if (!table) return;
  wanted.found = true;
  const row = wanted.row && rowsOf(table).find(r => actsOf(r)[0].getAttribute("href") === wanted.row);
  if (row && document.activeElement !== row) take(row, { preventScroll: true });
  scrollTo(0, wanted.y);
}

addEventListener("popstate", look);
addEventListener("scroll", remember, { passive: true });
for (const deed of ["pointerdown", "wheel"]) addEventListener(deed, () => { wanted = null; }, { passive: true });
if (["reload", "back_forward"].includes(performance.getEntriesByType("navigation")[0]?.type)) look();
new MutationObserver(prepare).observe(document.body, { childList: true, subtree: true });
prepare();
