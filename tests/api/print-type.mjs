// Writes types the same way every time: a type that the package shows by its name, any other written out.
import ts from "typescript";

const format = /** @type {ts.TypeFormatFlags} */ (ts.TypeFormatFlags.NoTruncation | ts.TypeFormatFlags.UseAliasDefinedOutsideCurrentScope);

/**
 * @param {ts.TypeChecker} checker
 * @param {ReadonlyMap<ts.Symbol, string>} named the types that some entry shows, with their names
 */
export function typePrinter(checker, named) {
  /** Types of words by identity: the compiler forgets their names where it works them out anew. */
  const wholes = new Map([...named].flatMap(([symbol, name]) => ((symbol.flags & ts.SymbolFlags.TypeAlias) === 0 || parametersOf(symbol).length > 0 ? [] : [[checker.getDeclaredTypeOfSymbol(symbol), name]])));
  /** @type {Map<string, string>} the same by their text, for those that were copied */
  const texts = new Map();
  /** @type {ts.Type[]} what is being written out, so that a type within itself ends */
  const open = [];

  /** @param {ts.Type} type @returns {string} */
  function print(type) {
    const { aliasSymbol, aliasTypeArguments } = type;
    if (aliasSymbol !== undefined && named.has(aliasSymbol)) return `${named.get(aliasSymbol) ?? ""}${generic(aliasTypeArguments)}`;
    if (wholes.has(type) && type.isUnion()) return wholes.get(type) ?? "";
    if (aliasSymbol !== undefined && isForeign(aliasSymbol)) return `${aliasSymbol.name}${generic(aliasTypeArguments)}`;
    if (type.isUnion()) return union(type.types);
    if (type.isIntersection()) return type.types.map(print).join(" & ");
    if ((type.flags & ts.TypeFlags.Object) === 0 || open.length > 12) return checker.typeToString(type, undefined, format);
    return object(/** @type {ts.ObjectType} */ (type));
  }

  /** @param {ts.ObjectType} type @returns {string} */
  function object(type) {
    const symbol = /** @type {ts.Symbol | undefined} */ (type.getSymbol());
    const parts = checker.isArrayType(type) || checker.isTupleType(type) || (type.objectFlags & ts.ObjectFlags.Reference) !== 0 ? checker.getTypeArguments(/** @type {ts.TypeReference} */ (type)) : [];
    if (checker.isArrayType(type)) return `${symbol?.name === "ReadonlyArray" ? "readonly " : ""}${wrapped(parts[0])}[]`;
    if (checker.isTupleType(type)) return tuple(/** @type {ts.TupleTypeReference} */ (type), parts);
    if (symbol !== undefined && (named.has(symbol) || (isForeign(symbol) && symbol.name !== "__type"))) return `${named.get(symbol) ?? symbol.name}${generic(ownArguments(type, parts))}`;
    if (open.includes(type)) return symbol?.name ?? "itself";
    open.push(type);
    const signatures = type.getCallSignatures();
    const members = checker.getPropertiesOfType(type).map(member);
    const indexes = checker.getIndexInfosOfType(type).map((info) => `[key: ${print(info.keyType)}]: ${print(info.type)}`);
    const all = [...(signatures.length === 1 && members.length + indexes.length === 0 ? [] : signatures.map(signature)), ...indexes, ...members];
    const [only] = signatures;
    const text = all.length === 0 && only !== undefined ? signature(only).replace(/^(.*)\): /s, "$1) => ") : `{ ${all.join("; ")} }`.replace("{  }", "{}");
    open.pop();
    return text;
  }

  /** @param {ts.TupleTypeReference} type @param {readonly ts.Type[]} parts */
  function tuple({ target }, parts) {
    const all = parts.map((part, index) => {
      const flags = target.elementFlags[index] ?? ts.ElementFlags.Required;
      const before = (flags & ts.ElementFlags.Variable) === 0 ? "" : "...";
      return `${before}${print(part)}${(flags & ts.ElementFlags.Rest) === 0 ? "" : "[]"}${(flags & ts.ElementFlags.Optional) === 0 ? "" : "?"}`;
    });
    return `${target.readonly ? "readonly " : ""}[${all.join(", ")}]`;
  }

  /** The arguments a reader writes: a class or an interface may carry a hidden one for `this`. @param {ts.ObjectType} type @param {readonly ts.Type[]} parts */
  function ownArguments(type, parts) {
    const { target } = /** @type {Partial<ts.TypeReference>} */ (type);
    return parts.slice(0, target?.typeParameters?.length ?? 0);
  }

  /** @param {readonly ts.Type[] | undefined} types */
  const generic = (types) => (types === undefined || types.length === 0 ? "" : `<${types.map(print).join(", ")}>`);
  /** @param {ts.Type | undefined} type */
  const wrapped = (type) => (type === undefined ? "unknown" : type.isUnionOrIntersection() && / [|&] /.test(print(type)) ? `(${print(type)})` : print(type));

  /** In the order of letters: the compiler's own order depends on what it met first. @param {readonly ts.Type[]} types */
  function union(types) {
    const words = [...new Set(types.map((one) => (one.getCallSignatures().length > 0 ? `(${print(one)})` : print(one))))].sort();
    const both = words.includes("true") && words.includes("false");
    const text = [...words.filter((word) => !both || (word !== "true" && word !== "false")), ...(both ? ["boolean"] : [])].sort().join(" | ");
    return texts.get(text) ?? text;
  }

  /** `readonly name?: type` @param {ts.Symbol} symbol */
  function member(symbol) {
    const declaration = symbol.valueDeclaration ?? symbol.declarations?.[0];
    const modifiers = declaration === undefined ? 0 : ts.getCombinedModifierFlags(declaration);
    const optional = (symbol.flags & ts.SymbolFlags.Optional) !== 0;
    const text = declaration !== undefined && ts.isPropertySignature(declaration) && declaration.type !== undefined && isNamed(declaration.type) ? written(declaration.type) : undefined;
    if (text !== undefined && text.length <= 100) return `${(modifiers & ts.ModifierFlags.Readonly) === 0 ? "" : "readonly "}${symbol.name}${optional ? "?" : ""}: ${text}`;
    const type = checker.getTypeOfSymbol(symbol);
    if ((symbol.flags & ts.SymbolFlags.Method) !== 0) return type.getCallSignatures().map((one) => `${symbol.name}${optional ? "?" : ""}${signature(one)}`).join("; ");
    const given = optional && type.isUnion() && !(type.aliasSymbol !== undefined && named.has(type.aliasSymbol)) ? union(type.types.filter((one) => (one.flags & ts.TypeFlags.Undefined) === 0)) : print(type);
    return `${(modifiers & ts.ModifierFlags.Readonly) === 0 ? "" : "readonly "}${symbol.name}${optional ? "?" : ""}: ${given}`;
  }

  /** `<T extends X>(a: A, b?: B): C` @param {ts.Signature} one @returns {string} */
  function signature(one) {
    const parameters = (one.getTypeParameters() ?? []).map((type) => (type.symbol.declarations ?? []).map(written)[0] ?? type.symbol.name);
    const given = one.getParameters().map((symbol) => {
      const at = symbol.valueDeclaration;
      const isRest = at !== undefined && ts.isParameter(at) && at.dotDotDotToken !== undefined;
      const optional = at !== undefined && ts.isParameter(at) && (at.questionToken !== undefined || at.initializer !== undefined);
      return `${isRest ? "..." : ""}${symbol.name}${optional ? "?" : ""}: ${print(checker.getTypeOfSymbol(symbol))}`;
    });
    // A class without a constructor of its own has a signature without a declaration.
    const declared = one.declaration?.type;
    // `value is Quantity` is no type of its own.
    const answer = declared !== undefined && ts.isTypePredicateNode(declared) ? declared.getText() : print(one.getReturnType());
    return `${parameters.length === 0 ? "" : `<${parameters.join(", ")}>`}(${given.join(", ")}): ${answer}`;
  }

  /** Whether a type, as it is written, names nothing but what stands for the same anywhere: no hidden type, no parameter. @param {ts.Node} node @returns {boolean} */
  function isNamed(node) {
    if (ts.isTypeReferenceNode(node)) {
      const at = checker.getSymbolAtLocation(node.typeName);
      const symbol = at !== undefined && (at.flags & ts.SymbolFlags.Alias) !== 0 ? checker.getAliasedSymbol(at) : at;
      if (symbol === undefined || !(isForeign(symbol) || named.get(symbol) === symbol.name)) return false;
    } else if (ts.isTypeQueryNode(node) || ts.isImportTypeNode(node)) return false;
    return ts.forEachChild(node, (child) => (isNamed(child) ? undefined : true)) === undefined;
  }

  for (const [type, name] of wholes) if (type.isUnion()) texts.set(union(type.types), name);

  return {
    type: print,
    member,
    signature,
    /** One line for each way of calling and each member, private ones left out. @param {ts.Type} type @returns {string[]} */
    members(type) {
      const shown = checker.getPropertiesOfType(type).filter((one) => !one.name.startsWith("__#") && one.name !== "#private" && !isForeign(one)).filter(({ declarations }) => declarations?.some((one) => ts.getCombinedModifierFlags(one) & (ts.ModifierFlags.Private | ts.ModifierFlags.Protected)) !== true);
      const indexes = checker.getIndexInfosOfType(type).map((info) => `  [key: ${print(info.keyType)}]: ${print(info.type)}`);
      return [...type.getCallSignatures().map((one) => `  ${signature(one)}`), ...indexes, ...shown.map((one) => `  ${member(one)}`)];
    },
    /** The words that a type of words allows, a line each; nothing for any other type. @param {ts.Type} type @returns {string[]} */
    words(type) {
      if (!type.isUnion() || !type.types.every((one) => one.isStringLiteral())) return [];
      return type.types.map((one) => `  ${JSON.stringify(/** @type {ts.StringLiteralType} */ (one).value)}`).sort();
    },
  };
}

/** Whether a type is of the language or of another package. @param {ts.Symbol} symbol */
function isForeign({ declarations = [] }) {
  return declarations.some((one) => /[\\/](?:node_modules|typescript[\\/]lib)[\\/]/.test(one.getSourceFile().fileName));
}

/**
 * A type as it is written, on one line and without comments; unions in the order of letters, since those that the compiler
 * writes come in another order with each build.
 *
 * @param {ts.Node} node
 */
export function written(node) {
  const source = node.getSourceFile();
  const printer = ts.createPrinter({ removeComments: true });
  /** @param {ts.Node} one */
  const text = (one) => printer.printNode(ts.EmitHint.Unspecified, one, source).replaceAll(/\s+/g, " ");
  const { transformed } = ts.transform(node, [(context) => (root) => {
    /** @param {ts.Node} one @returns {ts.Node} */
    const visit = (one) => {
      const inner = ts.visitEachChild(one, visit, context);
      return ts.isUnionTypeNode(inner) ? context.factory.createUnionTypeNode([...inner.types].sort((a, b) => (text(a) < text(b) ? -1 : 1))) : inner;
    };
    return visit(root);
  }]);
  return text(transformed[0] ?? node);
}

/** The type parameters of a type. @param {ts.Symbol} symbol @returns {readonly ts.Node[]} */
export function parametersOf({ declarations: [declaration] = [] }) {
  const { typeParameters = [] } = /** @type {{ typeParameters?: readonly ts.Node[] }} */ (/** @type {unknown} */ (declaration ?? {}));
  return typeParameters;
}
