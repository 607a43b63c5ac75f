using System.IO.Compression;
using System.Xml;

namespace TrimOut.HouseFile.Schedules;

/// <summary>
/// Cells of an .xlsx (ECMA-376 part 1, 18.3.1.4) that the reader of spreadsheets gives as blank and that are not: those with an error, such as #REF!, and
/// formulas that nobody has worked out yet.
/// </summary>
internal sealed class LostCells
{
    private static readonly Dictionary<string, string> None = [];
    private readonly Dictionary<string, Dictionary<string, string>> _sheets = new(StringComparer.Ordinal);

    /// <summary>Reads them; none of a file that is no .xlsx.</summary>
    public LostCells(byte[] file, bool isZip)
    {
        if (!isZip)
            return;
        using var zip = new ZipArchive(new MemoryStream(file));
        if (zip.GetEntry("xl/workbook.xml") is not { } book || zip.GetEntry("xl/_rels/workbook.xml.rels") is not { } relations)
            return;
        var parts = Elements(relations, "Relationship").ToLookup(r => r.GetValueOrDefault("Id", ""), r => r.GetValueOrDefault("Target", ""));
        foreach (var sheet in Elements(book, "sheet"))
        {
            var target = parts[sheet.GetValueOrDefault("id", "")].FirstOrDefault("");
            if (zip.GetEntry(target.StartsWith('/') ? target[1..] : $"xl/{target}") is { } part)
                _sheets[sheet.GetValueOrDefault("name", "")] = Cells(part);
        }
    }

    /// <summary>What stands in a cell instead of its value; empty where the reader of spreadsheets loses none there.</summary>
    /// <param name="sheet">The name of the sheet.</param>
    /// <param name="column">The column, from 0.</param>
    /// <param name="line">The row, from 1.</param>
    public string At(string sheet, int column, int line)
    {
        var cells = _sheets.GetValueOrDefault(sheet, None);
        return cells.Count == 0 ? "" : cells.GetValueOrDefault($"{Letters(column)}{line}", "");
    }

    private static string Letters(int column) => column < 26 ? $"{(char)('A' + column)}" : Letters((column / 26) - 1) + Letters(column % 26);

    private static List<Dictionary<string, string>> Elements(ZipArchiveEntry part, string name)
    {
        using var xml = XmlReader.Create(part.Open());
        var all = new List<Dictionary<string, string>>();
        while (xml.Read())
        {
            if (xml.NodeType != XmlNodeType.Element || xml.LocalName != name)
                continue;
            var attributes = new Dictionary<string, string>(StringComparer.Ordinal);
            while (xml.MoveToNextAttribute())
                attributes[xml.LocalName] = xml.Value;
            all.Add(attributes);
        }
        return all;
    }

    private static Dictionary<string, string> Cells(ZipArchiveEntry part)
    {
        using var xml = XmlReader.Create(part.Open());
        var lost = new Dictionary<string, string>(StringComparer.Ordinal);
        var (place, isError, isFormula, value, inValue) = ("", false, false, "", false);
        while (xml.Read())
        {
            switch (xml.NodeType, xml.LocalName)
            {
                case (XmlNodeType.Element, "c"):
                    (place, isError, isFormula, value) = (xml.GetAttribute("r") ?? "", xml.GetAttribute("t") == "e", false, "");
                    break;
                case (XmlNodeType.Element, "f"):
                    isFormula = true;
                    break;
                case (XmlNodeType.Element or XmlNodeType.EndElement, "v"):
                    inValue = xml is { NodeType: XmlNodeType.Element, IsEmptyElement: false };
                    break;
                case (XmlNodeType.Text, _) when inValue:
                    value += xml.Value;
                    break;
                case (XmlNodeType.EndElement, "c") when isError:
                    lost[place] = SheetError.IsOne(value) ? value : SheetError.Unknown;
                    break;
                case (XmlNodeType.EndElement, "c") when isFormula && value.Length == 0:
                    lost[place] = SheetError.NotWorkedOut;
                    break;
            }
        }
        return lost;
    }
}
