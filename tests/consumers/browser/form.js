// A form made from the schema of a calculation: a field for each input, its problem beside it, the answer below. The
// calculation itself is the form's validator. A worker works a whole job out meanwhile.
import { FieldApi, FormApi } from "@tanstack/form-core";
import { coursedFace } from "settingbed/joints";
import { jsonSchemaOf } from "settingbed/schema";

const { properties, required } = jsonSchemaOf(coursedFace);
const form = new FormApi({ defaultValues: {}, validators: { onSubmit: coursedFace }, onSubmit: ({ value }) => show(value) });
const element = document.querySelector("#form");
form.mount();

for (const [name, { title, description }] of Object.entries(properties)) {
  const label = document.createElement("label");
  label.textContent = `${title}${required.includes(name) ? "" : " (may be left out)"} `;
  const input = Object.assign(document.createElement("input"), { name, title: description });
  const problem = Object.assign(document.createElement("p"), { id: `${name}-problem` });
  input.setAttribute("aria-describedby", problem.id);
  const field = new FieldApi({ form, name });
  field.mount();
  input.addEventListener("input", () => field.handleChange(input.value === "" ? undefined : input.value));
  label.append(input);
  element.append(label, problem);
  field.store.subscribe(() => {
    problem.textContent = field.state.meta.errors.map(({ message }) => message).join(" ");
  });
}

element.append(Object.assign(document.createElement("button"), { textContent: "Work it out" }));
element.addEventListener("submit", (event) => {
  event.preventDefault();
  void form.handleSubmit();
});

function show(value) {
  const solution = coursedFace.solve(value);
  document.querySelector("#answer").textContent = solution.answers.volume.toString();
}

const worker = new Worker(new URL("./worker.js", import.meta.url), { type: "module" });
worker.addEventListener("message", ({ data }) => {
  document.querySelector("#order").textContent = data;
});
