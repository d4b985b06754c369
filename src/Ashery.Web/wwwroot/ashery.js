// Comfort only: every page works without this file.
(() => {
  "use strict";
  let path = location.pathname;
  let timer = 0;

  const submit = (form, submitter) => {
    clearTimeout(timer);
    if (submitter) form.requestSubmit(submitter); else form.requestSubmit();
  };

  // A list that submits at once hides its button.
  const prepare = () => {
    for (const button of document.querySelectorAll("[data-hide]")) button.hidden = true;
  };

  document.addEventListener("change", event => {
    const field = event.target;
    if (field.matches("[data-submit]")) submit(field.form);
    else if (field.form?.matches("[data-live]")) submit(field.form);
  });

  // Typing waits for a pause.
  document.addEventListener("input", event => {
    const field = event.target;
    if (field.form?.matches("[data-live]") && field.matches("input[type=text], input[type=search]")) {
      clearTimeout(timer);
      timer = setTimeout(() => { if (field.isConnected) submit(field.form); }, 700);
    }
  });

  // A file that is too large is refused before it is sent.
  document.addEventListener("submit", event => {
    for (const input of event.target.querySelectorAll("input[type=file][data-most]")) {
      const file = input.files[0];
      const says = file && file.size > Number(input.dataset.most)
        ? `That file has ${(file.size / 1048576).toFixed(1)} MB; ${(input.dataset.most / 1048576).toFixed(0)} MB is the most.` : "";
      input.setCustomValidity(says);
      if (says) { event.preventDefault(); event.stopPropagation(); input.reportValidity(); }
    }
  }, true);

  document.addEventListener("click", event => {
    if (event.target.closest("[data-print]")) print();
    // Enhanced navigation scrolls to a place on the page, and leaves the focus behind.
    if (event.target.closest(".skip")) document.getElementById("main").focus();
  });

  const arrived = () => {
    prepare();
    const trouble = document.querySelector("[data-focus]");
    if (trouble) trouble.focus();
    else if (location.pathname !== path) {
      const title = document.querySelector("main h1");
      if (title) { title.tabIndex = -1; title.focus({ preventScroll: true }); }
    }
    path = location.pathname;
  };

  prepare();
  window.Blazor?.addEventListener("enhancedload", arrived);
})();
