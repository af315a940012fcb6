// A crew's sheet of film readings, judged, and given back with what is wrong at which spot.
import { createReadStream } from "node:fs";
import { filmReadingCheck } from "settingbed/film";
import { allRows, csvText, readFilmReadings, recordTable } from "settingbed/sheet";

const sheet = await allRows(readFilmReadings(createReadStream(new URL("film-readings.csv", import.meta.url))));
for (const { message } of sheet.problems) console.error(message);

const { passes, fails } = filmReadingCheck({ film: "wet", rule: "band", least: "15 mil", most: "22 mil", spots: sheet.values });
const judged = sheet.values.map(({ name = "", readings }) => ({
  spot: name,
  readings: readings.map(String).join(", "),
  judged: fails.some(({ where }) => where === name) ? fails.flatMap(({ where, says }) => (where === name ? [says] : [])).join("; ") : "within the band",
}));
console.log(csvText(recordTable(judged)));
console.log(passes ? "Every spot is within the band." : `${fails.length} readings are not within the band.`);
