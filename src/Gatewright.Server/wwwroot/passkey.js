// Passkeys: the browser makes and uses the key, the server says what for. Without this file pages work by password.
const header = "X-Gatewright-Token";

async function ask(method, path, body) {
  const session = await (await fetch("/api/session")).json();
  const answer = await fetch(path, {
    method,
    headers: { [header]: session.antiforgery, ...(body && { "Content-Type": "application/json" }) },
    body: body && JSON.stringify(body),
  });
  if (!answer.ok) {
    const problem = await answer.json().catch(() => ({}));
    throw new Error(problem.detail ?? "The server did not take it: try again.");
  }
  return answer;
}

async function add(name) {
  const options = await (await ask("POST", "/api/account/passkeys/options")).json();
  const credential = await navigator.credentials.create({
    publicKey: PublicKeyCredential.parseCreationOptionsFromJSON(options),
  });
  await ask("POST", "/api/account/passkeys", { credential: JSON.stringify(credential), name });
}

async function use() {
  const options = await (await ask("POST", "/api/session/passkey/options")).json();
  const credential = await navigator.credentials.get({
    publicKey: PublicKeyCredential.parseRequestOptionsFromJSON(options),
  });
  await ask("POST", "/api/session/passkey", { credential: JSON.stringify(credential) });
}

const doing = {
  add: async button => {
    await add(button.dataset.name);
    location.reload();
  },
  use: async button => {
    await use();
    location.assign(button.dataset.to);
  },
};

if (window.PublicKeyCredential?.parseCreationOptionsFromJSON) {
  for (const button of document.querySelectorAll("button[data-passkey]")) {
    const said = document.getElementById(button.getAttribute("aria-describedby"));
    button.hidden = false;
    button.addEventListener("click", async () => {
      said.textContent = "";
      try {
        await doing[button.dataset.passkey](button);
      } catch (error) {
        said.textContent = error.name === "NotAllowedError" ? "Nothing was chosen. Try again, or use the password." : error.message;
      }
    });
  }
}
