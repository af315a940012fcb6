/** The names of inputs and steps of sheet in Spanish, by their English words. */
export const sheet = {
  "name of the wall": "nombre de la pared",
  "wall in which the opening is": "pared en que está el vano",
  "how many such openings": "cuántos vanos así",
  "how far the face turns into the opening": "cuánto entra la cara en el vano",
  "units that turn into the opening": "piezas que dan vuelta hacia el vano",
  "whether the opening reaches the foot of the wall": "si el vano llega al pie de la pared",
  "item of the order list": "artículo de la lista de pedido",
  "price of one pack, with its currency": "precio de un paquete, con su moneda",
  "price of one piece, with its currency": "precio de una pieza, con su moneda",
  "where it was read": "dónde se leyó",
  "reading of the film": "lectura de la película",
  "when it was read, as 2026-06-01T08:00": "cuándo se leyó, como 2026-06-01T08:00",
  "temperature that was read": "temperatura que se leyó",
};
