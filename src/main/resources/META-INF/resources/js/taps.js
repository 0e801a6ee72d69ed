/* A tap on something seen is sent at once, or waits in sight with its moment and is sent again until the server has it; it is never
   dropped without a word. The server counts it once, by a name of its own. What waits lives in this page only: leaving it asks first.
   Without script the form is sent like any other. js/bench.js shows the page that comes back. */
(() => {
  const EVERY = 2000;                       // ms between two tries
  const waiting = [];
  let sending = false;

  /* What waits stands over the tufts in words, and its button is dashed. */
  const mark = () => {
    if (waiting.length) document.body.dataset.taps = waiting.length;
    else delete document.body.dataset.taps;
    for (const button of document.querySelectorAll("[data-waiting]")) button.removeAttribute("data-waiting");
    for (const tap of waiting) [...document.querySelectorAll(".signs button")].find((one) => one.value === tap.value)?.setAttribute("data-waiting", "");
    const line = document.querySelector("[data-waits]");
    const words = waiting.length ? waiting[0].yes + ": " + waiting.map((tap) => tap.said).join(", ") : "";
    if (line && line.textContent !== words) line.textContent = words;
  };

  /* What cannot be kept any more is said over everything and stays there. */
  const refuse = (tap) => {
    const line = document.createElement("p");
    line.className = "waiting";
    line.setAttribute("role", "alert");
    line.textContent = tap.no + ": " + tap.said;
    document.querySelector("[data-live]").before(line);
  };

  /* randomUUID is there over https and on this machine only. */
  const name = () => crypto.randomUUID ? crypto.randomUUID() : Date.now() + "-" + Math.floor(Math.random() * 1e9);

  const send = (tap) => {
    const body = new URLSearchParams();
    const token = document.querySelector("input[name='csrf-token']");
    if (token) body.set("csrf-token", token.value);
    body.set("submission", tap.name);
    body.set("seen", tap.value);
    body.set("ago", String(Math.max(0, Math.round(performance.now() - tap.at))));
    return fetch(tap.to, { method: "POST", body, headers: { Accept: "text/html" } });
  };

  const done = (tap) => {
    waiting.splice(waiting.indexOf(tap), 1);
    mark();
  };

  /* One tap. True when the next may go. */
  const settled = async (tap) => {
    const answer = await send(tap);
    const page = await answer.text();
    const here = new URL(answer.url).pathname === new URL(tap.to).pathname.replace(/\/seen$/, "");
    if (answer.ok && here) {
      done(tap);
      if (waiting.length === 0) document.dispatchEvent(new CustomEvent("taps-page", { detail: page }));
      return true;
    }
    if (answer.status === 409 || answer.status === 404) {
      refuse(tap);
      done(tap);
      return true;
    }
    document.dispatchEvent(new CustomEvent("taps-stale"));   // signed out or a form too old: a fresh token is fetched, then it is tried again
    return false;
  };

  /* What waits, the oldest first. */
  const flush = async () => {
    if (sending) return;
    sending = true;
    try {
      while (waiting.length && await settled(waiting[0]));
    } catch {
      // no connection: the next try may find one
    } finally {
      sending = false;
    }
  };

  document.addEventListener("submit", (event) => {
    const form = event.target;
    if (form.dataset.livePost === undefined) return;
    event.preventDefault();
    const tapped = event.submitter;
    if (!tapped || waiting.some((tap) => tap.value === tapped.value)) return;
    const said = tapped.childNodes[0].textContent + tapped.childNodes[1].textContent;
    waiting.push({ to: form.action, name: name(), value: tapped.value, said, yes: form.dataset.livePost, no: form.dataset.refused, at: performance.now() });
    mark();
    flush();
  });

  document.addEventListener("bench-taken", mark);
  setInterval(flush, EVERY);
  addEventListener("online", flush);
  addEventListener("beforeunload", (event) => {
    if (waiting.length) event.preventDefault();
  });
})();
