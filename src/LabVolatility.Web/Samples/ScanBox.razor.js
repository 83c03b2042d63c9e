// A scanner is a fast keyboard: a label is told by its shape and by the speed of its keys, wherever the cursor is.
const label = /^(S[0-9]{7}(C[0-9]{2})?|X[0-9A-X]{2,20})[0-9A-X]$/i;
const between = 60;

export function listen(box, page) {
  let burst = "", last = 0, field = null, before = "";

  function key(event) {
    if (event.ctrlKey || event.altKey || event.metaKey) return;
    const now = event.timeStamp; // when the key was struck, however busy the page is
    if (event.key === "Enter" || event.key === "Tab") {
      const code = now - last < 4 * between ? burst : "";
      burst = "";
      if (!label.test(code)) return;
      event.preventDefault();
      event.stopImmediatePropagation();
      if (field) {
        // Whoever kept a copy of the label forgets it, and what stood there is told before the page may turn.
        field.value = before;
        for (const type of ["input", "change"]) field.dispatchEvent(new Event(type, { bubbles: true }));
      }
      page.invokeMethodAsync("Scanned", code.toUpperCase()).catch(() => sound("Unknown"));
      return;
    }
    if (event.key.length !== 1) return;
    if (now - last > between) {
      burst = "";
      const typing = event.target.matches?.("input:not([type=radio]):not([type=checkbox]), textarea");
      field = typing ? event.target : null;
      before = field === box ? "" : field?.value ?? "";
    }
    burst += event.key;
    last = now;
  }

  document.addEventListener("keydown", key, true);
  const switched = box.form.querySelector(".scan-sound");
  switched.addEventListener("click", () => { localStorage.setItem(silence, isSilent() ? "no" : "yes"); show(switched); });
  show(switched);
  box.dataset.listening = "yes";
  return { stop: () => document.removeEventListener("keydown", key, true) };
}

const silence = "lab/silent-scans";
const isSilent = () => localStorage.getItem(silence) === "yes";

function show(switched) {
  switched.setAttribute("aria-pressed", isSilent() ? "false" : "true");
  switched.textContent = isSilent() ? "Sound off" : "Sound on";
}

// Pitch and length in seconds, one after the other: told apart without looking.
const tones = {
  Found: [[880, 0.08]],
  Done: [[660, 0.08], [660, 0.08]],
  WrongPlace: [[440, 0.12], [330, 0.2]],
  Unknown: [[220, 0.35]],
};

let audio;
export function sound(verdict) {
  if (isSilent()) return;
  try {
    audio ??= new AudioContext();
    let at = audio.currentTime;
    for (const [pitch, length] of tones[verdict]) {
      const tone = audio.createOscillator(), level = audio.createGain();
      tone.frequency.value = pitch;
      level.gain.value = 0.05;
      tone.connect(level).connect(audio.destination);
      tone.start(at);
      tone.stop(at + length);
      at += length + 0.05;
    }
  } catch {
    // No sound device: the words and the shape stand beside the box.
  }
}
