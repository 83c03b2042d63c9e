// Where a page's typing lies in this browser, per tab and address: enciphered with a key that the server hands to the
// same person only, in an envelope that only the server opens. Nobody else at this computer can read it.
import { own } from "./own.js";

const prefix = "lab/typed/", envelope = "lab/envelope";
let key = null, writing = Promise.resolve();

/** The server's clock less this one's, in milliseconds. */
export let ahead = 0;

const bytes = text => Uint8Array.from(atob(text), c => c.charCodeAt(0));
const text = array => btoa(String.fromCharCode(...array));

/** Fetches the key; false while the server can't be reached. */
export async function unlock() {
  if (key) return true;
  const asked = Date.now();
  const answer = await fetch("/session/typing-key", {
    method: "POST", headers: { ...own, "X-Lab-Envelope": sessionStorage.getItem(envelope) ?? "" },
  }).catch(() => null);
  if (!answer?.ok) return false;
  const given = await answer.json();
  ahead = given.now - (asked + Date.now()) / 2;
  if (given.envelope !== sessionStorage.getItem(envelope)) empty();
  sessionStorage.setItem(envelope, given.envelope);
  key = await crypto.subtle.importKey("raw", bytes(given.key), "AES-GCM", false, ["encrypt", "decrypt"]);
  return true;
}

// Another person's, or too old: it can't be read any more.
function empty() {
  for (const name of Object.keys(sessionStorage).filter(n => n.startsWith(prefix))) sessionStorage.removeItem(name);
}

export const holds = place => sessionStorage.getItem(prefix + place) !== null;

export async function read(place) {
  const [iv, cipher] = (sessionStorage.getItem(prefix + place) ?? ".").split(".").map(bytes);
  if (!key || cipher.length === 0) return null;
  const plain = await crypto.subtle.decrypt({ name: "AES-GCM", iv }, key, cipher).catch(() => null);
  return plain && JSON.parse(new TextDecoder().decode(plain));
}

/** Puts in the content that the function gives when its turn comes; null takes it out. */
export function put(place, content) {
  writing = writing.then(async () => {
    const given = content();
    if (given === null) return sessionStorage.removeItem(prefix + place);
    if (!await unlock()) return;
    const iv = crypto.getRandomValues(new Uint8Array(12));
    const cipher = await crypto.subtle.encrypt({ name: "AES-GCM", iv }, key, new TextEncoder().encode(JSON.stringify(given)));
    sessionStorage.setItem(prefix + place, `${text(iv)}.${text(new Uint8Array(cipher))}`);
  });
  return writing;
}
