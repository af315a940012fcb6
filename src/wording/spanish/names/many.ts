/** The names of inputs and steps of many in Spanish, by their English words. */
export const many = {
  columns: "columnas",
};
