import { sentence } from "../../core/refusals.js";
import type { RefusalTexts } from "../refusals.js";

const inSpanish = { courses: "hiladas", units: "piezas" };

/** Why the functions for layouts refuse, in Spanish. */
export const layout: RefusalTexts["layout"] = {
  shortLegOverLong: ({ longLeg }) => sentence`a lo más el lado largo, ${longLeg}`,
  legsSetOffset: () => "los lados de las piezas de esquina fijan el desfase; no lo escriba",
  offsetMustBeTold: () => 'sin piezas de esquina hay que darlo; escriba "50 %" para medio desfase, 0 si las juntas verticales van en línea',
  closesWithJoints: ({ units, called, joint }) => sentence`${units} ${inSpanish[called]} cierran con juntas de ${joint}`,
  noWholeNumberCloses: ({ called }) => sentence`ningún número entero de ${inSpanish[called]} cierra`,
  oneCutTooSmall: ({ called, leastCut }) => sentence`con una de las ${inSpanish[called]} cortada queda menos de ${leastCut} para cada una`,
  twoCutTooSmall: ({ called, leastCut }) => sentence`con dos de las ${inSpanish[called]} cortadas queda menos de ${leastCut} para cada una`,
  jointsDoNotFill: ({ least, most, why }) => sentence`juntas de ${least} a ${most} no lo llenan: ${why}; dé otra longitud o altura, un rango de juntas más amplio, o un leastCut menor`,
  oneUnitFills: () => "una sola pieza lo llena, y no hay junta que calcular",
  filledByAtMost: ({ most, called }) => sentence`llenado por ${most} ${inSpanish[called]} a lo más`,
  stubUnderLegs: ({ leg }) => sentence`es menos de dos veces un lado de ${leg}, y las piezas de esquina no pueden alternarse en un tramo tan corto; córtelas a la medida, una por una`,
  cornersLeaveNoRoom: ({ course }) => sentence`las piezas de esquina de la hilada ${course} no dejan lugar entre ellas`,
  sayWhereBedJointLies: () => 'escriba "under the unit" (bajo la pieza), o "over the unit" (sobre la pieza) si la primera pieza va sobre un listón de apoyo',
  datumTells: ({ datum }) => sentence`el datum "${datum}" ya dice dónde están las juntas; no lo escriba`,
  jointUnderNarrowest: ({ least }) => sentence`al menos la junta más angosta, ${least}`,
  jointOverWidest: ({ most }) => sentence`a lo más la junta más ancha, ${most}`,
  levelFootCutsNothing: () => "con un pie a nivel no se corta nada bajo el listón de apoyo; no lo escriba",
  waitNeedsAll: () => "la espera necesita timeAtReference, reference, temperature y rule juntos; dé los cuatro o ninguno",
  anotherElevation: () => "otra elevación tiene este nombre; dé a cada cual el suyo",
  sillHeadOrBoth: () => "dé un antepecho (sill), un dintel (head) o los dos",
  headUnderSill: ({ sill }) => sentence`mayor que el antepecho, ${sill}`,
  oneTo: ({ most }) => sentence`dé de 1 a ${most}`,
  withinCourses: ({ most }) => sentence`a menos de ${most} hiladas de la línea base`,
  twoUnitsOrMore: () => "una hilada lleva dos piezas o más",
  endPiecesDoNotComeOut: () => "no salen sus piezas de los extremos",
  longestShorterEnd: ({ length }) => sentence`lo más que puede medir su pieza corta del extremo es ${length}`,
  nextCourseUnderLeast: ({ first, last, next, leastCut }) => sentence`la primera hilada termina en piezas de ${first} y ${last}, y con este desfase en la siguiente ${next}, menos que el corte mínimo de ${leastCut}; dé un leastCut menor, otro desfase, o un rango de juntas más amplio`,
};
