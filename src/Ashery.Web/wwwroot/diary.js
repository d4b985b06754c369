// Comfort of quick entry: without this file each button sends the form, and the page comes back with the new figure.
(() => {
  "use strict";
  document.addEventListener("click", event => {
    const button = event.target.closest("[data-step]");
    if (!button) return;
    event.preventDefault();
    const input = button.parentElement.querySelector("input");
    const digits = Math.max(0, ...[input.value, button.dataset.step].map(text => (text.split(".")[1] ?? "").length));
    const next = Math.max(0, (Number(input.value) || 0) + Number(button.dataset.step));
    input.value = String(Number(next.toFixed(digits)));
  });
})();
