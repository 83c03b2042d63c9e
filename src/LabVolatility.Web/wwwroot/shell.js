// Called by pages through Layout/Browser.cs.
export function show(dialog) {
  if (dialog && !dialog.open) dialog.showModal();
}

export function close(dialog) {
  if (dialog && dialog.open) dialog.close();
}

export function theme(name) {
  const secure = location.protocol === "https:" ? "; Secure" : "";
  if (name) {
    document.documentElement.dataset.theme = name;
    document.cookie = `labvolatility-theme=${name}; Path=/; Max-Age=31536000; SameSite=Lax${secure}`;
  } else {
    delete document.documentElement.dataset.theme;
    document.cookie = `labvolatility-theme=; Path=/; Max-Age=0; SameSite=Lax${secure}`;
  }
}

export function prefersDark() {
  return matchMedia("(prefers-color-scheme: dark)").matches;
}

export function focus(id) {
  document.getElementById(id)?.focus();
}
