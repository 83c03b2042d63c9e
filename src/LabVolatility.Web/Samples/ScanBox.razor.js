// A scanner is a fast keyboard: a label is told by its shape and by the speed of its keys, wherever the cursor is.
const label = /^S[0-9]{7}(C[0-9]{2})?[0-9A-X]$/i;
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
        field.value = before;
        field.dispatchEvent(new Event("input", { bubbles: true })); // whoever kept a copy of the label forgets it
      }
      page.invokeMethodAsync("Scanned", code.toUpperCase());
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
  box.dataset.listening = "yes";
  return { stop: () => document.removeEventListener("keydown", key, true) };
}

let audio;
export function sound(found) {
  try {
    audio ??= new AudioContext();
    if (audio.state !== "running") return;
    const tone = audio.createOscillator(), level = audio.createGain();
    tone.frequency.value = found ? 880 : 220;
    level.gain.value = 0.05;
    tone.connect(level).connect(audio.destination);
    tone.start();
    tone.stop(audio.currentTime + (found ? 0.08 : 0.3));
  } catch {
    // No sound device: the words and the shape stand beside the box.
  }
}
