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
        svg { max-width: 100%; height: auto; margin: 2mm 0; vertical-align: bottom; }
        table { border-collapse: collapse; width: 100%; font-size: 9pt; line-height: 1.25; }
        th, td { border: 0.2mm solid #666; padding: 0.7mm 1.6mm; text-align: left; vertical-align: top; overflow-wrap: anywhere; }
        th { background: #e8e8e8; border-bottom: 0.5mm solid #000; overflow-wrap: normal; }
        th, td, p, li, h1, h2, h3 { unicode-bidi: plaintext; }
        .k { white-space: nowrap; }
        .service-form table:has(th:nth-child(5)) td:last-child { min-width: 42mm; }
        td:has(.blank) { height: 9mm; vertical-align: bottom; }
        .blank { color: #aaa; white-space: nowrap; }
        td:first-child { font-weight: 600; overflow-wrap: break-word; }
        table:not(:has(th:nth-child(3))) th:first-child { width: 38%; }
        .labels p:has(svg[data-part]) { margin: 0; }
        svg[data-part] { display: block; margin: 0; }
        @page letter { size: 215.9mm 279.4mm; margin: 0; @bottom-right { content: none; } }
        @page a4 { size: 210mm 297mm; margin: 0; @bottom-right { content: none; } }
        @media print {
          @page { margin: 16mm 16mm 18mm; @bottom-right { content: counter(page) " / " counter(pages); font: 8pt sans-serif; } }
          html { font-size: 10pt; }
          main { max-width: none; padding: 0; }
          .binder h2:has(+ h2) { break-before: page; margin-top: 0; }
          .binder { line-height: 1.35; }
          .binder h2 { margin-top: 5mm; }
          .binder ul:has(a[href^="#"]) { columns: 2; }
          .binder table { font-size: 8.5pt; }
          .binder table:has(tr:nth-child(8)) { break-inside: auto; }
          .binder p:has(svg ~ svg) svg { max-width: 49%; max-height: 46mm; }
          h3 { margin-top: 4mm; }
          th, td { padding-block: 0.45mm; }
          svg { margin: 1mm 0; }
          h1, h2, h3, h2 + p, h3 + p, p:has(svg) { break-after: avoid; }
          svg { max-height: 235mm; break-inside: avoid; }
          svg[data-part] { max-width: none; max-height: none; margin: 0; }
          p:has(> svg[data-part]) { break-before: page; break-after: page; }
          p:has(> svg[data-part="letter"]) { page: letter; }
          p:has(> svg[data-part="a4"]) { page: a4; }
          tr, li, table:not(:has(tr:nth-child(16))) { break-inside: avoid; }
          thead { display: table-header-group; }
          th { -webkit-print-color-adjust: exact; print-color-adjust: exact; }
          p { orphans: 3; widows: 3; }
        }
        """;
}
