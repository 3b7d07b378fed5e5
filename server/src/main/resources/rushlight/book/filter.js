// A filter over the names of the A to Z page. Without it the page is whole.
(function () {
  const place = document.getElementById("filter-place");
  if (!place) {
    return;
  }
  const label = document.createElement("label");
  label.htmlFor = "filter";
  label.textContent = "Show names with ";
  const field = document.createElement("input");
  field.id = "filter";
  field.type = "search";
  field.autocomplete = "off";
  const told = document.createElement("span");
  told.setAttribute("role", "status");
  place.append(label, field, " ", told);
  const names = [...document.querySelectorAll(".names-list li")].map((li) => [li, li.textContent.toLowerCase()]);
  field.addEventListener("input", () => {
    const wanted = field.value.trim().toLowerCase();
    let shown = 0;
    for (const [li, text] of names) {
      li.hidden = wanted !== "" && !text.includes(wanted);
      shown += li.hidden ? 0 : 1;
    }
    for (const section of document.querySelectorAll(".letter")) {
      section.hidden = !section.querySelector("li:not([hidden])");
    }
    told.textContent = wanted === "" ? "" : shown + (shown === 1 ? " name" : " names");
  });
})();
