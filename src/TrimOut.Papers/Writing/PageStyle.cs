namespace TrimOut.Papers.Writing;

/// <summary>How a paper looks on a screen and, in black and white, on Letter or A4.</summary>
internal static class PageStyle
{
    // The page has no fixed size: the printer's paper, Letter or A4, gives it, and the margins leave both the same column of text.
    public const string Css = """
        :root { color-scheme: light; }
        * { box-sizing: border-box; }
        html { background: #fff; color: #000; font: 10.5pt/1.45 "Segoe UI", "Helvetica Neue", Arial, "Liberation Sans", "DejaVu Sans", sans-serif; }
        body { margin: 0; }
        main { max-width: 180mm; margin: 0 auto; padding: 10mm 5mm; }
        h1 { font-size: 22pt; line-height: 1.2; margin: 0 0 6mm; padding-bottom: 3mm; border-bottom: 1.2mm solid #000; }
        h2 { font-size: 15pt; line-height: 1.25; margin: 10mm 0 3mm; padding-bottom: 1mm; border-bottom: 0.3mm solid #000; }
        .binder h2:has(+ h2) { font-size: 18pt; border: 0; }
        .binder h2 + h2 { margin-top: 2mm; }
        h3 { font-size: 11.5pt; line-height: 1.3; margin: 6mm 0 2mm; }
        p, ul, ol, table { margin: 0 0 3mm; }
        ul, ol { padding-left: 6mm; }
        li { margin-bottom: 1mm; }
        a { color: inherit; }
        svg { max-width: 100%; height: auto; margin: 2mm 0; vertical-align: top; }
        table { position: relative; border-collapse: collapse; width: 100%; font-size: 9pt; line-height: 1.25; }
        caption { position: absolute; width: 1px; height: 1px; overflow: hidden; clip-path: inset(50%); white-space: nowrap; }
        th, td { border: 0.2mm solid #666; padding: 0.7mm 1.6mm; text-align: left; vertical-align: top; overflow-wrap: anywhere; }
        thead th { background: #e8e8e8; border-bottom: 0.5mm solid #000; overflow-wrap: normal; }
        tbody th { font-weight: 600; overflow-wrap: break-word; }
        th, td, p, li, h1, h2, h3 { unicode-bidi: plaintext; }
        .k, .f { white-space: nowrap; }
        .service-form table:has(th:nth-child(5)) td:last-child { min-width: 42mm; }
        td:has(.blank), th:has(.blank) { height: 9mm; vertical-align: bottom; }
        .blank { color: #595959; white-space: nowrap; }
        .page { float: right; padding-left: 2mm; }
        table:not(:has(th:nth-child(3))) tbody th { width: 38%; }
        .labels p:has(svg[data-part]) { margin: 0; }
        svg[data-part] { display: block; margin: 0; }
        @page letter { size: 215.9mm 279.4mm; margin: 0; @top-left { content: none; } @top-right { content: none; }
          @bottom-left { content: none; } @bottom-right { content: none; } }
        @page a4 { size: 210mm 297mm; margin: 0; @top-left { content: none; } @top-right { content: none; }
          @bottom-left { content: none; } @bottom-right { content: none; } }
        @media screen and (max-width: 640px) {
          html { font-size: 12pt; }
          main { padding: 5mm 4mm; }
          h1 { font-size: 18pt; }
          h1, h2, h3, p, li { overflow-wrap: anywhere; }
          table { font-size: 11pt; }
          thead th, tbody th { overflow-wrap: anywhere; }
          table:not(:has(th:nth-child(3))) tbody th { width: 50%; }
          p:has(svg) { overflow-x: auto; }
          svg { max-width: none; }
          p:has(> svg[data-wide])::before { content: "\2194" / ""; display: block; position: sticky; left: 0; width: 6mm; line-height: 1; }
          .wide, .wide tbody, .wide tr, .wide th { display: block; }
          .wide thead { position: absolute; width: 1px; height: 1px; overflow: hidden; clip-path: inset(50%); }
          .wide tr { border: 0.4mm solid #000; margin-bottom: 3mm; }
          .wide tbody th { background: #e8e8e8; }
          .wide tbody th, .wide td { display: flow-root; border: 0; padding-left: 44%; height: auto; }
          .wide td { border-top: 0.2mm solid #666; }
          .wide tbody th::before, .wide td::before { content: attr(data-label); float: left; width: 72%; margin-left: -75%; font-weight: 400; color: #333; }
          .wide th[data-of]::after { content: " \00B7 " attr(data-of); font-weight: 400; }
          .k { white-space: normal; }
        }
        @media print {
          @page { margin: 15mm 16mm 14mm; font: 8pt sans-serif; }
          html { font-size: 10pt; }
          main { max-width: none; padding: 0; }
          caption { display: none; }
          table { width: calc(100% - 0.4mm); margin-inline: 0.2mm; }
          .binder h2:has(+ h2) { break-before: page; margin-top: 0; }
          .binder { line-height: 1.3; }
          .binder h2 { margin-top: 4mm; }
          .binder ul:has(a[href^="#"]) { columns: 2; column-gap: 14mm; list-style: none; padding: 0; }
          .binder table { font-size: 8.5pt; line-height: 1.15; }
          .binder :is(th, td) { padding-block: 0.25mm; }
          .binder :is(p, ul, ol, table) { margin-bottom: 2.4mm; }
          .binder li { margin-bottom: 0.6mm; }
          .binder h3 { margin-top: 3mm; }
          .binder table:has(tr:nth-child(6)) { break-inside: auto; }
          .card, .panel-door { line-height: 1.3; }
          .card h1, .panel-door h1 { margin-bottom: 3mm; padding-bottom: 1.5mm; }
          .card h2, .panel-door h2 { margin: 3mm 0 1.5mm; }
          .card :is(p, ol, table), .panel-door :is(p, ul, table) { margin-bottom: 2mm; }
          .binder td:has(.blank), .card td:has(.blank) { min-width: 26mm; }
          .binder td:last-child:has(.blank), .panel-schedule h2 + table td:last-child:has(.blank) { min-width: 40mm; }
          .panel-door h3 ~ h3 { break-before: page; }
          h3 { margin-top: 4mm; }
          th, td { padding-block: 0.45mm; }
          td:not(.k) { min-width: 16mm; }
          svg { margin: 1mm 0; }
          h1, h2, h3, h2 + p, h3 + p, p:has(+ table), p:has(svg) { break-after: avoid; }
          :is(h2, h3) + p:has(+ :is(h2, h3)) { break-after: auto; }
          tbody tr:nth-child(-n + 2):not(:last-child), tbody tr:nth-last-child(2) { break-after: avoid; }
          svg { max-height: 235mm; break-inside: avoid; }
          .sun-sheet h3 { margin: 2mm 0 1mm; }
          .sun-sheet h3 ~ p { line-height: 1.3; margin-bottom: 1.5mm; }
          .sun-sheet h3 ~ p svg { margin: 0; }
          .panel-schedule h2:has(+ h3), .panel-schedule h3 ~ h3 { break-before: page; margin-top: 0; }
          .panel-schedule h2 + h3 { margin-top: 2mm; }
          .panel-schedule h2 + ul { break-inside: avoid; break-after: avoid; }
          .panel-schedule h2 + table { break-inside: avoid; }
          .panel-schedule h3 ~ table { font-size: 8.2pt; line-height: 1.15; margin-bottom: 1.5mm; }
          .panel-schedule h3 ~ table :is(th, td) { padding-block: 0.15mm; }
          .sun-sheet h3 ~ table { font-size: 8.5pt; line-height: 1.15; }
          .sun-sheet h3 ~ table :is(th, td) { padding-block: 0.2mm; }
          .hang-sheet p:has(svg) { break-inside: avoid; margin-bottom: 1.5mm; }
          .hang-sheet p:has(svg):is(p + p, :has(+ p), :has(+ table tr:nth-child(5))) { break-after: auto; }
          .hang-sheet, .measure-form, .walk-sheet { orphans: 9; }
          .hang-sheet h3 ~ table { margin-bottom: 1.5mm; }
          .measure-form h3 ~ h2 { break-before: page; margin-top: 0; }
          .measure-form h3 ~ table, .hang-sheet h3 ~ table:not(:has(tr:nth-child(9))),
          .walk-sheet h3 ~ table:not(:has(tr:nth-child(11))) { display: inline-table; vertical-align: top; }
          svg[data-part] { max-width: none; max-height: none; margin: 0; }
          p:has(> svg[data-part]) { break-before: page; break-after: page; }
          p:has(> svg[data-part="letter"]) { page: letter; }
          p:has(> svg[data-part="a4"]) { page: a4; }
          tr, li, table:not(:has(tr:nth-child(16))) { break-inside: avoid; }
          .receiving-list table:has(th:nth-child(9)) { break-inside: auto; }
          thead { display: table-header-group; }
          thead th { -webkit-print-color-adjust: exact; print-color-adjust: exact; }
          p { orphans: 3; widows: 3; }
          p:has(svg ~ svg) { orphans: 1; widows: 1; }
          .binder :is(p, table):has(+ h3 + p + table td:last-child .blank),
          .binder :is(p, table):has(+ h3 + table + h3 + p + table td:last-child .blank) { break-after: avoid; }
          .test-record :is(p, table):has(+ h2 + table:last-child) { break-after: avoid; }
          .binder p:has(svg ~ svg), .binder p:has(svg):has(+ p > svg) { break-after: auto; }
        }
        """;
}
