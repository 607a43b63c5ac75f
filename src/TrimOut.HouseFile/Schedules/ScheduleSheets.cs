using System.Globalization;
using System.Text;
using TrimOut.Core;

namespace TrimOut.HouseFile.Schedules;

/// <summary>The rows of a schedule, whatever kind of file it is.</summary>
internal static class ScheduleSheets
{
    /// <summary>The sheets of a file: several of a spreadsheet, else one.</summary>
    /// <param name="file">Its bytes.</param>
    /// <param name="name">What it is called.</param>
    /// <param name="options">How it is to be read: the encoding of text as the user named it, and columns.</param>
    public static Result<IReadOnlyList<Sheet>> Read(byte[] file, string name, ScheduleOptions options)
    {
        var encoding = options.Encoding;
        if (SpreadsheetRows.IsOne(file))
            return SpreadsheetRows.Read(file);
        if (IfcRows.IsOne(file))
            return IfcRows.Read(file).Then<IReadOnlyList<Sheet>>(rows => new Sheet[] { new(null, rows) { Remark = IfcRows.AboutFacing } });
        if (encoding is null && Array.IndexOf(file, (byte)0) >= 0 && file is not ([0xff, 0xfe, ..] or [0xfe, 0xff, ..]))
            return new Refusal($"{name} is no text file, no spreadsheet and no building model (IFC). Export the schedule as CSV or .xlsx.");
        return (encoding is null ? CsvRows.Decode(file) : Decode(file, encoding)).Then(text => CsvRows.Read(text, IsSchedule)).Then(Alone);

        bool IsSchedule(IReadOnlyList<SheetRow> rows) => !rows.All(r => r.IsBlank) && ColumnMap.Find(rows, options.Columns).CanRead;
    }

    private static Result<IReadOnlyList<Sheet>> Alone(IReadOnlyList<SheetRow> rows) => new Sheet[] { new(null, rows) };

    /// <summary>Text in a named encoding: utf-8, a number of a code page such as 850, or a name such as iso-8859-2 or macintosh.</summary>
    private static Result<string> Decode(byte[] file, string encoding)
    {
        var named = int.TryParse(encoding, NumberStyles.None, CultureInfo.InvariantCulture, out var page)
            ? CodePagesEncodingProvider.Instance.GetEncoding(page)
            : CodePagesEncodingProvider.Instance.GetEncoding(encoding)
                ?? Encoding.GetEncodings().FirstOrDefault(e => e.Name.Equals(encoding, StringComparison.OrdinalIgnoreCase))?.GetEncoding();
        return named is null
            ? new Refusal($"There is no encoding \"{encoding}\". Name one such as utf-8, 1252, 850, 437, 1250, iso-8859-2 or macintosh.")
            : named.GetString(file).TrimStart('\ufeff');
    }
}
