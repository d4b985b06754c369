// Passkeys: the browser asks for the device's lock. Without this file the password works as ever.
(() => {
  "use strict";
  const supported = () => window.PublicKeyCredential?.parseCreationOptionsFromJSON !== undefined;

  const post = async (path, form, body) => {
    const answer = await fetch(path, {
      method: "POST", credentials: "same-origin",
      headers: { "Content-Type": "application/json", "RequestVerificationToken": form.querySelector("[name=__RequestVerificationToken]").value },
      body: JSON.stringify(body ?? {}),
    });
    if (!answer.ok) throw new Error("The passkey was not taken.");
    return answer.headers.get("Content-Type")?.includes("json") ? answer.json() : null;
  };

  const run = async button => {
    const form = button.form;
    if (button.dataset.passkey === "add") {
      const options = PublicKeyCredential.parseCreationOptionsFromJSON(await post("/account/passkeys/options", form));
      const made = await navigator.credentials.create({ publicKey: options });
      await post("/account/passkeys", form, made.toJSON());
    } else {
      const options = PublicKeyCredential.parseRequestOptionsFromJSON(await post("/sign-in/passkey/options", form));
      const shown = await navigator.credentials.get({ publicKey: options });
      await post("/sign-in/passkey", form, shown.toJSON());
    }
    location.assign(button.dataset.back);
  };

  const prepare = () => {
    for (const button of document.querySelectorAll("[data-passkey]")) button.hidden = !supported();
  };

  document.addEventListener("click", event => {
    const button = event.target.closest("[data-passkey]");
    if (!button) return;
    const says = button.form.querySelector("[data-passkey-says]");
    says.hidden = true;
    run(button).catch(error => { says.textContent = error.message; says.hidden = false; });
  });

  prepare();
  window.Blazor?.addEventListener("enhancedload", prepare);
})();
