/* Sends a form whose double counts once by itself, as often as it takes, and leaves the page when the server has it. Starts on every form with
   data-goes; its value is what to say while the line is away. Nothing is stored. */
(() => {
  const PATIENCE = 30000;                   // ms for one form on a slow line
  const PAUSES = [2000, 4000, 8000, 15000]; // ms before it is tried again; the last one from then on

  const sayer = (form) => {
    const line = document.createElement("p");
    line.className = "mistake";
    line.setAttribute("role", "status");
    return (words) => {
      line.textContent = words;
      if (!words || line.isConnected) return;
      const button = form.querySelector("button[type=submit]:last-of-type");
      (button ? button.parentNode : form).insertBefore(line, button);
    };
  };

  /* As the browser itself would write it. */
  const written = (form, button) => {
    const fields = [...new FormData(form)];
    if (button?.name) fields.push([button.name, button.value]);
    return new URLSearchParams(fields.map(([name, value]) => [name, value.replace(/\r?\n/g, "\r\n")])).toString();
  };

  /* The answer; nothing when the line broke or the server asks for patience. */
  const posted = async (form, body) => {
    const limit = new AbortController();
    const timer = setTimeout(() => limit.abort(), PATIENCE);
    const headers = { Accept: "text/html", "Content-Type": "application/x-www-form-urlencoded", Prefer: "return=minimal" };
    try {
      const answer = await fetch(form.action, { method: "POST", body, headers, redirect: "manual", signal: limit.signal });
      return [429, 502, 503, 504].includes(answer.status) ? null : answer;
    } catch {
      return null;
    } finally {
      clearTimeout(timer);
    }
  };

  const leave = (to) => {
    const next = new URL(to, location.href);
    if (next.hash && next.href.split("#")[0] === location.href.split("#")[0]) {
      history.replaceState(null, "", next);
      location.reload();
    } else {
      location.assign(next);
    }
  };

  /* A page with mistakes, or one that asks for the link again: the browser sends the form itself and shows it. */
  const shown = (form, button) => {
    if (button?.name) {
      const hidden = document.createElement("input");
      Object.assign(hidden, { type: "hidden", name: button.name, value: button.value });
      form.append(hidden);
    }
    form.submit();
  };

  const goes = (form) => {
    const say = sayer(form);
    let going = null;                       // the sending on its way, if there is one
    let pressed;                            // her last press is the one that counts
    let hurry = () => {};

    const pause = (time) => new Promise((done) => {
      const timer = setTimeout(done, time);
      hurry = () => { clearTimeout(timer); done(); };
    });

    /* The same words again and again count once; other words than those that may have arrived are another form. */
    const send = async (me) => {
      let before = "";
      for (let at = 0; me === going; at++) {
        const button = pressed;
        let body = written(form, button);
        if (before && body !== before && form.elements.submission) {
          const other = crypto.getRandomValues(new Uint32Array(1))[0].toString(16).padStart(8, "0");
          form.elements.submission.value = form.elements.submission.value.slice(0, -8) + other;
          body = written(form, button);
        }
        before = body;
        const answer = await posted(form, body);
        if (me !== going) return;
        if (button !== pressed) continue;
        if (answer) return answer.status === 204 ? leave(answer.headers.get("Location")) : shown(form, button);
        say(form.dataset.goes);
        await pause(PAUSES[Math.min(at, PAUSES.length - 1)]);
      }
    };

    form.addEventListener("submit", (event) => {
      if (!("submitter" in event)) return;  // an old browser goes its own way
      event.preventDefault();
      pressed = event.submitter;
      if (going) return hurry();
      going = {};
      form.setAttribute("aria-busy", "true");
      send(going);
    });
    addEventListener("online", () => hurry());
    const rest = () => {                    // Back must find a form that can be sent, and that does not go by itself
      going = null;
      form.removeAttribute("aria-busy");
      say("");
    };
    addEventListener("pagehide", rest);
    addEventListener("pageshow", rest);
  };

  document.querySelectorAll("form[data-goes]").forEach(goes);
})();
