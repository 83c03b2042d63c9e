// The fields of a page by name: data-keep, id, the group of a choice, or the spoken label.
const taken = "input:not([type=password], [type=file], [type=hidden], [type=search], [type=submit], [type=button]), select, textarea";

const spoken = field => field.labels?.[0]?.textContent.trim().replace(/\s+/g, " ") ?? "";

export const isKept = field => field?.matches?.(taken) && !field.readOnly && !field.closest("[data-keep=no]") && !!nameOf(field);

export const nameOf = field => field.type === "radio" ? `choice ${field.name}`
  : field.dataset.keep ?? (field.id || field.getAttribute("aria-label") || spoken(field));

export const choiceOf = radio => radio.dataset.number ?? (radio.id || spoken(radio));

export const valueOf = field => field.type === "checkbox" ? String(field.checked)
  : field.type === "radio" ? (field.checked ? choiceOf(field) : "") : field.value;

export function labelOf(field) {
  const group = field.type === "radio" ? field.closest("fieldset")?.querySelector("legend") ?? field.closest("section")?.querySelector("h2") : null;
  return (group?.textContent.trim() || spoken(field) || field.getAttribute("aria-label") || "").slice(0, 60);
}

/** Every kept field of the page by its name; of a group of choices all. */
export function byName() {
  const found = new Map();
  for (const field of document.querySelectorAll(taken)) {
    if (isKept(field)) found.set(nameOf(field), [...found.get(nameOf(field)) ?? [], field]);
  }
  return found;
}

/** Of a group of choices the one with this value, else the chosen one. */
export const pick = (fields, value) => fields?.[0].type !== "radio" ? fields?.[0]
  : fields.find(f => choiceOf(f) === value) ?? fields.find(f => f.checked) ?? fields[0];

export const canHold = (field, value) => !field.disabled
  && (field.tagName !== "SELECT" || [...field.options].some(o => o.value === value))
  && (field.type !== "radio" || choiceOf(field) === value);

export function fill(field, value) {
  field.closest("details")?.setAttribute("open", "");
  if (field.type === "checkbox") field.checked = value === "true";
  else if (field.type === "radio") field.checked = true;
  else field.value = value;
}

export function caretOf(field) {
  try {
    return [field.selectionStart, field.selectionEnd];
  } catch {
    return [null, null]; // this kind of field has no caret
  }
}

export function putCaret(field, [start, end]) {
  field.focus();
  if (start !== null && field.matches("textarea, input[type=text], input:not([type])")) field.setSelectionRange(start, end);
}
