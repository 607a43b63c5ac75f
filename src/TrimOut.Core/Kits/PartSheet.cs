using System.Collections.Immutable;
using System.Globalization;
using TrimOut.Core.Facts;
using TrimOut.Core.Houses;
using TrimOut.Core.Units;

namespace TrimOut.Core.Kits;

/// <summary>A part with what was read off its sheet, outside of any house.</summary>
/// <param name="Kind">What sort of part it is.</param>
/// <param name="Name">What it is called.</param>
/// <param name="About">What is said about the sheet itself, by the names of <see cref="AboutSheet"/>, in stored forms.</param>
/// <param name="Values">Its values, in the order of sheets; blanks are left out.</param>
public sealed record PartSheet(ItemKind Kind, string Name, ImmutableSortedDictionary<string, string> About, ImmutableArray<SheetValue> Values)
{
    /// <summary>A part of a house. Who held it last, and when, is what the house knows of it.</summary>
    public static PartSheet Of(House house, Item part)
    {
        var about = AboutSheet.Names.Where(n => n is not (AboutSheet.HeldBy or AboutSheet.HeldOn) && part.Latest(n)?.Stored is not null)
            .ToImmutableSortedDictionary(n => n, n => part.Latest(n)!.Stored!, StringComparer.Ordinal);
        var values = SheetValues.Of(part.Kind).Where(f => part.Latest(f)?.Stored is not null)
            .Select(f => new SheetValue(f, part.Latest(f)!.Stored!, SheetMark.Holds(part, f))).ToImmutableArray();
        if (CheckedLast(part) is ({ } by, { } on))
            about = about.SetItem(AboutSheet.HeldBy, by).SetItem(AboutSheet.HeldOn, on);
        return new PartSheet(part.Kind, house.NameOf(part), about, values) { WrittenIn = house.DisplayUnits };
    }

    /// <summary>The units that its lengths are written in, those of its house, where they hold them without loss; null for millimeters.</summary>
    public DisplayUnits? WrittenIn { get; init; }

    /// <summary>Who last checked values of a part that count as checked, and on which day, as 2026-03-14; nobody where none counts.</summary>
    /// <param name="part">The part.</param>
    public static (string? By, string? On) CheckedLast(Item part)
    {
        var last = SheetValues.Of(part.Kind).Where(f => part.Latest(f)?.Stored is not null && SheetMark.Holds(part, f))
            .Select(f => part.Latest(Companion.Checked(f.Name))!).MaxBy(h => h.At);
        // Somebody may have held values against the sheet after what was said about it came with a file.
        return last is null ? default
            : part.Latest(AboutSheet.HeldOn) is { Stored: not null } said && said.At >= last.At ? (part.Latest(AboutSheet.HeldBy)?.Stored, said.Stored)
            : (Short(last.By), last.At.ToString("yyyy-MM-dd", CultureInfo.InvariantCulture));
    }

    /// <summary>How many of the values that are there nobody checked against the edition that is said of a part, and how many are there.</summary>
    /// <param name="part">The part.</param>
    public static (int Unchecked, int There) NotChecked(Item part) =>
        (SheetValues.NotHeldIn(part).Count(), SheetValues.Of(part).Count(f => part.Latest(f)?.Stored is not null));

    // Whoever saves a change may have a longer name than the sheet has room for.
    private static string Short(string by) => AboutSheet.Of(ItemKind.CoveringKind, AboutSheet.HeldBy).ReadTyped(by, House.Empty).Ok
        ? by : new StringInfo(by).SubstringByTextElements(0, AboutSheet.LongestName);

    /// <summary>Against which other sheet or edition its file says that its values were checked, so that none counts; null where it says none.</summary>
    public string? HeldAgainstOther { get; init; }

    /// <summary>Whether that is another sheet, and not only another edition of the same one.</summary>
    public bool IsHeldAgainstOtherSheet { get; init; }

    /// <summary>
    /// What its file names and does not say that its values were held against, so that none counts: the sheet, the edition, or both; null where neither is so.
    /// </summary>
    public string? HeldAgainstUnknown { get; init; }

    /// <summary>Whether its file says that its values were checked on a day that is still to come, so that none counts.</summary>
    public bool IsHeldLater { get; init; }

    /// <summary>
    /// The part as it counts beside one that is there: where that one names a sheet or an edition and this one does not, nobody knows what its values were
    /// checked against, and none counts as checked.
    /// </summary>
    /// <param name="there">The part of a house or of a folder that it is a sheet of; null where there is none.</param>
    public PartSheet Beside(PartSheet? there) => there is not null && Values.Any(v => v.Held)
        && AboutSheet.WhichSheet.Where(n => there.About.ContainsKey(n) && !About.ContainsKey(n)).ToList() is { Count: > 0 } unnamed
        ? this with { Values = [.. Values.Select(v => v with { Held = false })], HeldAgainstUnknown = string.Join(" and ", unnamed) } : this;

    /// <summary>
    /// The part as it counts on a day: of one that says it was checked later, nobody knows when it was, and none of its values counts as checked.
    /// </summary>
    /// <param name="today">The day on which it is read.</param>
    public PartSheet On(DateOnly today) => IsHeldAfter(today)
        ? this with { Values = [.. Values.Select(v => v with { Held = false })], IsHeldLater = true } : this;

    /// <summary>The part as it counts in a house, beside the one that is there.</summary>
    /// <param name="house">The house.</param>
    public PartSheet Beside(House house) => Beside(In(house) is { } there ? Of(house, there) : null);

    /// <summary>Why none of its values counts as checked though its file says that they were, as a sentence; null where that is not so.</summary>
    public string? WhyNoneCounts => !About.ContainsKey(AboutSheet.HeldBy) || !About.ContainsKey(AboutSheet.HeldOn) ? null
        : HeldAgainstOther is { } other ? $"The values of {Name} count as not checked: they were checked against another one ({other})."
        : HeldAgainstUnknown is { } unknown ? $"The values of {Name} count as not checked: its file says against no known {unknown}. Check again."
        : IsHeldLater ? $"The values of {Name} count as not checked: its file says that they were checked on {About[AboutSheet.HeldOn]}, "
            + $"which is still to come. Look at {AboutSheet.HeldOn} in it." : null;

    /// <summary>The edition of its sheet; null where none is said.</summary>
    public string? Edition => About.GetValueOrDefault(AboutSheet.Edition);

    /// <summary>Whether it says that its values were checked later than a day: nobody can have.</summary>
    private bool IsHeldAfter(DateOnly day) => About.TryGetValue(AboutSheet.HeldOn, out var on)
        && DateOnly.TryParseExact(on, "yyyy-MM-dd", CultureInfo.InvariantCulture, DateTimeStyles.None, out var held) && held > day;

    /// <summary>The part of a house that it is a sheet of: the same sort, the same name; null where there is none.</summary>
    public Item? In(House house) => house.ItemsOf(Kind).FirstOrDefault(i => SameName.Comparer.Equals(house.NameOf(i), Name));
}

/// <summary>A value of a part outside of any house.</summary>
/// <param name="Fact">Which value.</param>
/// <param name="Stored">Its stored form.</param>
/// <param name="Held">Whether somebody held it against the sheet.</param>
public readonly record struct SheetValue(Fact Fact, string Stored, bool Held);
