// A spreadsheet program that recalculates our workbooks, and another reader that opens them; both are there or the checks are skipped.
import { execFileSync } from "node:child_process";
import { mkdirSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import path from "node:path";
import { strFromU8, strToU8, unzipSync, zipSync } from "fflate";

function runs(command: string, ...words: readonly string[]): boolean {
  try {
    execFileSync(command, words, { stdio: "ignore" });
    return true;
  } catch {
    return false;
  }
}

const python = ["/usr/bin/python3", "python3"].find((one) => runs(one, "-c", "import openpyxl"));

/** Why the checks cannot run here; nothing where they can. */
export const lacking: string | undefined = !runs("soffice", "--version")
  ? "no soffice on PATH (Debian: apt-get install libreoffice-calc)"
  : python === undefined
    ? "no openpyxl for python3 (Debian: apt-get install python3-openpyxl)"
    : undefined;

/** What a workbook holds, as openpyxl reads it. */
export interface Read {
  readonly names: Readonly<Record<string, number | string | null>>;
  readonly errors: readonly string[];
  readonly titles: readonly string[];
  readonly order: readonly (readonly (number | string | null)[])[];
  readonly frozen: Readonly<Record<string, string | null>>;
}

/** A folder of workbooks that is thrown away. */
export class Office {
  readonly folder = mkdtempSync(path.join(tmpdir(), "settingbed-sheet-"));

  /** The path of a file in the folder. */
  at(...names: readonly string[]): string {
    return path.join(this.folder, ...names);
  }

  /**
   * Writes a workbook with every figure beside a formula struck out, so that what is read later was worked out there, and
   * with other numbers in some named cells.
   *
   * @param bare - whether texts and looks are struck out too: to set them takes far longer than to work out numbers
   */
  put(name: string, workbook: Uint8Array, { numbers = {}, bare = false }: { readonly numbers?: Readonly<Record<string, number>>; readonly bare?: boolean } = {}): void {
    const files = Object.fromEntries(Object.entries(unzipSync(workbook)).map(([file, bytes]) => [file, strFromU8(bytes)]));
    const book = files["xl/workbook.xml"] ?? "";
    const places = new Map([...book.matchAll(/<definedName name="([^"]*)">'Givens'!([^<]*)</g)].map(([, cell = "", at = ""]) => [at.replaceAll("$", ""), cell]));
    const left = new Set(Object.keys(numbers));
    const givens = `xl/worksheets/sheet${/<sheet name="Givens" sheetId="(\d+)"/.exec(book)?.[1] ?? ""}.xml`;
    files[givens] = (files[givens] ?? "").replace(/<c r="([A-Z]+\d+)" s="\d+"><v>[^<]*/g, (all, at: string) => {
      const cell = places.get(at) ?? "";
      return left.delete(cell) ? all.replace(/[^>]*$/, String(numbers[cell])) : all;
    });
    if (left.size > 0) throw new Error(`${[...left].join(", ")}: not in ${name}`);
    for (const file of Object.keys(files).filter((one) => one.startsWith("xl/worksheets/"))) {
      const struck = (files[file] ?? "").replace(/<\/f><v>[^<]*<\/v>/g, "</f>");
      files[file] = bare ? struck.replace(/<c [^>]*t="inlineStr".*?<\/c>|<c [^>]*\/>/g, "").replace(/ s="\d+"/g, "") : struck;
    }
    writeFileSync(this.at(name), zipSync(Object.fromEntries(Object.entries(files).map(([file, text]) => [file, strToU8(text)]))));
  }

  /** Recalculates workbooks, and reads what came out. */
  recalculated(names: readonly string[]): readonly Read[] {
    const out = this.at("out");
    mkdirSync(out, { recursive: true });
    const words = [`-env:UserInstallation=file://${this.at("profile")}`, "--headless", "--convert-to", "xlsx", "--outdir", out];
    execFileSync("soffice", [...words, ...names.map((name) => this.at(name))], { stdio: "ignore" });
    return this.read(names.map((name) => path.join("out", name)));
  }

  /** Reads workbooks as they are. */
  read(names: readonly string[]): readonly Read[] {
    const script = path.join(import.meta.dirname, "cells.py");
    const lines = execFileSync(python ?? "python3", [script, ...names.map((name) => this.at(name))], { encoding: "utf8", maxBuffer: 1 << 28 }).trim().split("\n");
    return lines.map((line) => JSON.parse(line) as Read);
  }

  /** A CSV as a workbook that the program itself wrote. */
  fromCsv(name: string, text: string): Uint8Array {
    writeFileSync(this.at(`${name}.csv`), text);
    const words = [`-env:UserInstallation=file://${this.at("profile")}`, "--headless", "--convert-to", "xlsx", "--outdir", this.at("out")];
    execFileSync("soffice", [...words, this.at(`${name}.csv`)], { stdio: "ignore" });
    return readFileSync(this.at("out", `${name}.xlsx`));
  }

  /** Throws the folder away. */
  close(): void {
    rmSync(this.folder, { recursive: true, force: true });
  }
}
