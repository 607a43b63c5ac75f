using System.Globalization;
using TrimOut.Core;
using TrimOut.Core.Units;

namespace TrimOut.HouseFile.Schedules;

/// <summary>The column that somebody named, in full or by a part of its header.</summary>
/// <param name="Column">Its place among the cells of the header, from 0; null where a field is to be taken from no column.</param>
/// <param name="Unit">The unit of its bare numbers; empty where neither the name nor the header says one.</param>
/// <param name="InFull">Whether the whole header was named.</param>
internal sealed record NamedColumn(int? Column, string Unit, bool InFull)
{
    private const int MostNamed = 16;

    /// <summary>The column of a header that is meant.</summary>
    /// <param name="header">The header's cells.</param>
    /// <param name="field">What it is named for.</param>
    /// <param name="typed">
    /// A header or a part of one, or <c>#3</c> for the third column; <c>=mm</c> behind it is the unit of its bare numbers. Nothing at all is no column.
    /// </param>
    /// <param name="found">The column that the field has by its header alone; null where none. It is meant where only a unit is said.</param>
    /// <returns>That; or that it fits none, or several.</returns>
    public static Result<NamedColumn> Of(IReadOnlyList<string> header, ScheduleField field, string typed, int? found)
    {
        var name = typed.Trim();
        if (name.Length == 0)
            return new NamedColumn(null, "", InFull: true);
        var (at, unit) = (name.LastIndexOf('='), "");
        if (at >= 0 && !header.Contains(name, StringComparer.OrdinalIgnoreCase) && HeaderName.UnitOf(name[(at + 1)..]) is { Length: > 0 } said)
            (name, unit) = (name[..at].Trim(), said);
        var fit = name.Length > 0 ? Fitting(header, name) : found is { } own ? [own] : [];
        return fit switch
        {
            [var one] => new NamedColumn(one, unit.Length > 0 ? unit : HeaderName.Of(header[one]).Unit, !IsShort(header[one], name)),
            [] => new Refusal((name.Length == 0 ? $"No column holds the {field.Name} yet" : $"No column is headed \"{name}\" (asked for as {field.Name})")
                + $". The columns are: {string.Join(", ", header.Where(c => c.Length > 0).Take(MostNamed))}."),
            _ when fit.Select(c => header[c]).Distinct(StringComparer.OrdinalIgnoreCase).Count() == fit.Count =>
                new Refusal($"\"{name}\" (asked for as {field.Name}) fits {Counted(fit)}: "
                    + $"{string.Join(", ", fit.Select(c => header[c]))}. Write more of the one."),
            _ => new Refusal($"\"{name}\" (asked for as {field.Name}) fits {Counted(fit)}: {string.Join(", ", fit.Select(c => $"{Place(c)} {header[c]}"))}. "
                + $"Write the place of the one, such as {Place(fit[0])}."),
        };
    }

    /// <summary>Whether a header was named by a part of it.</summary>
    private static bool IsShort(string header, string name) => name.Length > 0 && name[0] != '#' && !header.Equals(name, StringComparison.OrdinalIgnoreCase);

    /// <summary>In full, else but for how it is written, else by the beginnings of its words, else by any part of it.</summary>
    private static List<int> Fitting(IReadOnlyList<string> header, string name)
    {
        List<int> Of(Func<string, bool> fits) => [.. Enumerable.Range(0, header.Count).Where(c => header[c].Length > 0 && fits(header[c]))];
        if (Of(h => h.Equals(name, StringComparison.OrdinalIgnoreCase)) is { Count: > 0 } whole)
            return whole;
        if (name[0] == '#' && int.TryParse(name.AsSpan(1), NumberStyles.None, CultureInfo.InvariantCulture, out var place))
            return place >= 1 && place <= header.Count ? [place - 1] : [];
        // A name with a unit is that of a column in that unit: one in another would be read wrong by the factor between them.
        var plain = HeaderName.Of(name);
        if (plain.Name.Length == 0)
            return [];
        bool InItsUnit(string h) => plain.Unit.Length == 0 || HeaderName.Of(h).Unit == plain.Unit;
        return Of(h => HeaderName.Of(h).Name == plain.Name && InItsUnit(h)) is { Count: > 0 } same ? same
            : Of(h => NameWords.Begin(h, name)) is { Count: > 0 } begin ? begin
            : Of(h => HeaderName.Of(h).Name.Contains(plain.Name, StringComparison.Ordinal) && InItsUnit(h));
    }

    private static string Counted(List<int> fit) => NumberText.Counted(fit.Count, "column");

    /// <summary>A column by its place in the row, as it can be named.</summary>
    public static string Place(int column) => string.Create(CultureInfo.InvariantCulture, $"#{column + 1}");
}
