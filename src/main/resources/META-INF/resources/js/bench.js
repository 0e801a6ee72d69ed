/* The bench follows along on every device: the part marked data-live is asked for again every two seconds and taken over when its
   version changed. Clocks count on in between, and on a page
   without such a part by themselves. When one is down the title says so, and a quiet tone sounds if somebody asked for it.
   Without script every page still works: "Look again" is a link. Taps on something seen are js/taps.js's. Nothing is kept. */
(() => {
  const EVERY = 2000;                       // ms between two looks
  let live = document.querySelector("[data-live]");
  if (!live && !document.querySelector("[data-left]")) return;
  const title = document.title;
  const say = document.querySelector("[data-say]");
  const rung = new Set();
  let readAt = performance.now();
  let sound = null;

  const two = (number) => String(number).padStart(2, "0");

  const left = (clock) => Math.max(0, clock.dataset.left - Math.floor((performance.now() - readAt) / 1000));

  const tick = () => {
    let due = "";
    for (const clock of (live || document).querySelectorAll("[data-left]")) {
      const seconds = left(clock);
      clock.textContent = two(Math.floor(seconds / 60)) + ":" + two(seconds % 60);
      clock.classList.toggle("due", seconds === 0);
      if (seconds > 0) {
        rung.delete(clock.dataset.clock);
        continue;
      }
      due = clock.dataset.due;
      if (!rung.has(clock.dataset.clock)) {
        rung.add(clock.dataset.clock);
        ring();
      }
    }
    document.title = due ? due + " · " + title : title;
  };

  /* Two soft tones, rising. */
  const ring = () => {
    if (!sound) return;
    [[0, 523], [0.35, 659]].forEach(([after, pitch]) => {
      const tone = sound.createOscillator();
      const volume = sound.createGain();
      const start = sound.currentTime + after;
      tone.frequency.value = pitch;
      volume.gain.setValueAtTime(0, start);
      volume.gain.linearRampToValueAtTime(0.12, start + 0.04);
      volume.gain.linearRampToValueAtTime(0, start + 0.3);
      tone.connect(volume).connect(sound.destination);
      tone.start(start);
      tone.stop(start + 0.32);
    });
  };

  for (const button of document.querySelectorAll("[data-sound]")) {
    if (!window.AudioContext) break;
    button.hidden = false;
    button.addEventListener("click", () => {
      sound = sound || new AudioContext();
      sound.resume();
      button.textContent = button.dataset.on;
      button.setAttribute("aria-pressed", "true");
      ring();
    });
  }

  /* Whoever is typing inside the part, typed something, or opened something in it, is not disturbed. */
  const inHand = () => live.contains(document.activeElement) && document.activeElement.matches("input, select, textarea")
    || live.querySelector("details[open] form") !== null
    || [...live.querySelectorAll("input:not([type=hidden], [type=radio], [type=checkbox]), textarea")].some((field) => field.value !== field.defaultValue);

  /* Every form goes on with the newest token, whichever part of the page it stands in. */
  const renewTokens = (next) => {
    const token = next.querySelector("input[name='csrf-token']")?.value;
    if (token) for (const field of document.querySelectorAll("input[name='csrf-token']")) field.value = token;
  };

  /* js/taps.js says so on the body while a tap waits. */
  const tapsWait = () => "taps" in document.body.dataset;

  /* The live part of a page that was fetched. Signed out, or another page by now: then this one is loaded again, unless a tap waits on it. */
  const fresh = (html) => {
    const next = new DOMParser().parseFromString(html, "text/html").querySelector("[data-live]");
    if (next) renewTokens(next);
    else if (!tapsWait()) location.reload();
    return next;
  };

  const take = (html) => {
    const next = fresh(html);
    if (!next) return;
    readAt = performance.now();
    const changed = next.dataset.version !== live.dataset.version;
    if (changed && !inHand()) {
      const held = live.contains(document.activeElement) ? document.activeElement.value : null;
      live.replaceWith(next);
      live = next;
      if (held) [...live.querySelectorAll("button")].find((button) => button.value === held)?.focus();
      if (say) say.textContent = live.dataset.news;
    } else {
      for (const clock of live.querySelectorAll("[data-left]")) {
        const other = next.querySelector(`[data-clock="${clock.dataset.clock}"]`);
        if (other) clock.dataset.left = other.dataset.left;
      }
    }
    document.dispatchEvent(new CustomEvent("bench-taken"));
    tick();
  };

  const look = async () => {
    try {
      const answer = await fetch(live.dataset.live, { headers: { Accept: "text/html", "X-Version": live.dataset.version }, cache: "no-store" });
      if (!answer.ok) return;
      const html = await answer.text();
      if (tapsWait()) fresh(html);
      else take(html);
    } catch {
      // without a connection the clocks count on; the next look may find one
    }
  };

  /* Without a connection a form in this part stays, with everything typed on it. */
  document.addEventListener("submit", (event) => {
    const form = event.target;
    if (navigator.onLine || !live?.contains(form) || !form.dataset.keep) return;
    event.preventDefault();
    if (say) {
      say.textContent = form.dataset.keep;
      say.classList.remove("unseen");
    }
  });

  setInterval(tick, 250);
  if (!live) return;                        // clocks alone, with nothing to follow
  document.addEventListener("taps-page", (event) => take(event.detail));
  document.addEventListener("taps-stale", () => look());
  setInterval(look, EVERY);
  addEventListener("online", () => {
    if (say) say.classList.add("unseen");
    look();
  });
})();
