// The bench works without this. With it: keys drawn on the screen instead of a keyboard, and the reading drawn on its limit while it is typed.
"use strict";
(() => {
  const form = document.getElementById("step");
  if (!form) return;
  const KEYS = { amount: ["7", "8", "9", "⌫", "4", "5", "6", "±", "1", "2", "3", "−", ".", "0"], days: ["7", "8", "9", "⌫", "4", "5", "6", "-", "1", "2", "3", "", "", "0"] };
  KEYS.torque = KEYS.amount;
  const NAMES = { "⌫": "rub out", "±": "plus or minus", "−": "minus", "-": "dash", ".": "point" };
  const pad = document.createElement("div");
  pad.className = "pad";
  pad.setAttribute("role", "group");
  pad.setAttribute("aria-label", "Number pad");
  let field = null;

  const number = (text) => (/^[-+]?\d+(\.\d+)?$/.test(text) ? Number(text) : null);

  // The bar is in its own unit; a reading in another unit is shown once it is saved or refused.
  const draw = (input) => {
    const question = input.closest("fieldset");
    const bar = question.querySelector("svg.bar");
    if (!bar) return;
    const units = [...question.querySelectorAll(".unit input")];
    const own = units.length === 0 || units[0].checked;
    const parts = input.value.trim().replace(/,/g, ".").replace(/−/g, "-").split("±");
    const value = own ? number(parts[0].trim()) : null;
    const half = parts.length > 1 ? number(parts[1].trim()) || 0 : Number(input.dataset.u || 0);
    const band = bar.querySelector(".band");
    if (value === null) {
      band.setAttribute("width", "0");
      return;
    }
    const from = Number(bar.dataset.from);
    const wide = bar.viewBox.baseVal.width;
    const at = (v) => Math.min(wide, Math.max(0, ((v - from) * wide) / (Number(bar.dataset.to) - from)));
    const left = at(value - half);
    const width = Math.max(4, at(value + half) - left);
    band.setAttribute("x", String(Math.min(left, wide - width)));
    band.setAttribute("width", String(width));
  };

  const press = (key) => {
    if (!field) return;
    const end = field.value.length;
    field.value = key === "⌫" ? field.value.slice(0, -1) : field.value + (key === "−" ? "-" : key);
    field.setSelectionRange(end + 1, end + 1);
    field.dispatchEvent(new Event("input", { bubbles: true }));
  };

  const show = (input) => {
    field = input;
    pad.replaceChildren(...KEYS[input.dataset.pad].filter((key) => key !== "").map((key) => {
      const one = document.createElement("button");
      one.type = "button";
      one.className = "key" + (key === "0" ? " wide" : "");
      one.textContent = key;
      if (NAMES[key]) one.setAttribute("aria-label", NAMES[key]);
      one.addEventListener("click", () => press(key));
      return one;
    }));
    pad.classList.toggle("days", input.dataset.pad === "days");
    input.closest(".value").after(pad);
  };

  const fields = [...form.querySelectorAll("[data-pad]")];
  for (const input of fields) {
    input.setAttribute("inputmode", "none");
    input.addEventListener("focus", () => { if (field !== input) show(input); });
    input.addEventListener("input", () => draw(input));
    draw(input);
  }
  for (const unit of form.querySelectorAll(".unit input")) unit.addEventListener("change", () => draw(unit.closest("fieldset").querySelector("[data-pad]")));
  if (fields.length > 0) {
    show(fields[0]);
    if (!form.querySelector("[role=alert]") && form.querySelectorAll("fieldset").length === fields.length) fields[0].focus({ preventScroll: true });
  }

  // One sending: a second tap while the first is on its way does nothing.
  let sent = false;
  form.addEventListener("submit", (event) => {
    if (sent) event.preventDefault();
    sent = true;
    setTimeout(() => { sent = false; }, 4000);
  });
})();
