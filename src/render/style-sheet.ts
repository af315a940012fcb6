/** How an HTML solution looks, on a screen and on paper: black on white. */
export const styleSheet = `.worked { color: #000; background: #fff; font: 11pt/1.4 Georgia, "Times New Roman", serif; max-width: 48rem; margin: 0 auto; }
.worked h1, .worked h2, .worked h3, .worked h4, .worked h5, .worked h6 { line-height: 1.2; margin: 1.2em 0 0.4em; break-after: avoid; }
.worked h1, .worked > h2 { font-size: 1.5em; margin-top: 0; }
.worked section > h2, .worked section > h3 { font-size: 1.15em; }
.worked section section > h3, .worked section section > h4, .worked h5, .worked h6 { font-size: 1em; }
.worked table { border-collapse: collapse; width: 100%; }
.worked thead { display: table-header-group; }
.worked thead th { border-bottom: 1px solid #000; font-weight: bold; white-space: nowrap; }
.worked th, .worked td { text-align: left; vertical-align: top; padding: 0.15em 0.8em 0.15em 0; }
.worked tbody th { font-weight: normal; }
.worked td { overflow-wrap: anywhere; }
.worked ol, .worked ul { margin: 0; padding-left: 1.8em; }
.worked .steps > li { margin-bottom: 0.9em; break-inside: avoid; }
.worked .way { overflow-x: auto; overflow-y: hidden; }
.worked .sources { list-style: none; padding-left: 0; }
.worked p { margin: 0.2em 0; }
.worked .ways { display: flex; flex-wrap: wrap; gap: 0.3em 2.5em; }
.worked .system { font-style: italic; }
.worked math { font-family: "STIX Two Math", "STIX Math", "Cambria Math", "Latin Modern Math", math; font-size: 1.1em; }
.worked math[display="block"] { display: block math; width: max-content; margin: 0.3em 0; text-align: left; }
.worked .steps mtd { text-align: left; padding: 0.25em 0.15em; }
.worked .steps mtd:first-child { text-align: right; }
.worked .sheet mtd { padding: 0.8em 0.15em; }
@media print {
  @page { margin: 18mm; }
  .worked { max-width: none; font-size: 10pt; }
  .worked tr { break-inside: avoid; }
  .worked .way { overflow: visible; }
}
`;
