using System.Collections.Immutable;
using TrimOut.Core.Checks;
using TrimOut.Core.Facts;
using TrimOut.Core.History;
using TrimOut.Core.Houses;
using TrimOut.Core.Kits;
using TrimOut.Core.Units;
using TrimOut.Core.Wording;

namespace TrimOut.Core.Decisions;

/// <summary>Takes a part from outside into a house: a new one, or another edition of one that is there.</summary>
public static class TakePart
{
    /// <summary>What of a part would change in a house: values that are other or new, in the order of sheets. What it leaves blank stays.</summary>
    public static ImmutableArray<PartChange> Changes(House house, PartSheet part)
    {
        var there = part.In(house);
        return
        [
            .. part.Values.Where(v => there?.Latest(v.Fact)?.Stored != v.Stored).Select(v => new PartChange(v.Fact,
                there is null ? "" : v.Fact.ShowOf(there, house),
                v.Fact.DecodeAny(v.Stored) is { Ok: true } value ? v.Fact.Show(value.Value, house) : v.Stored)),
        ];
    }

    /// <summary>What is said otherwise about the sheet itself: which one, its edition, who checked the values and when.</summary>
    public static ImmutableArray<PartChange> AboutChanges(House house, PartSheet part)
    {
        var there = part.In(house);
        return
        [
            .. AboutToPut(part.Beside(house), there).Select(a => AboutSheet.Of(part.Kind, a.Name))
                .Select(f => new PartChange(f, there is null ? "" : f.ShowOf(there, house),
                    f.DecodeAny(part.About[f.Name]) is { Ok: true } value ? f.Show(value.Value, house) : part.About[f.Name])),
        ];
    }

    /// <summary>Whether it is of another sheet, or of another edition, than the part of the house was checked against.</summary>
    public static bool IsOtherEdition(PartSheet part, Item? there) => there is not null && AboutSheet.WhichSheet
        .Any(n => part.About.TryGetValue(n, out var stored) && there.Latest(n)?.Stored != stored);

    /// <summary>
    /// Values that the part of the house has and another edition does not. They stay, and count as not checked: what another edition said is no longer known.
    /// </summary>
    public static ImmutableArray<Fact> NotInEdition(House house, PartSheet part) => part.In(house) is { } there && IsOtherEdition(part, there)
        ? [.. SheetValues.Of(part.Kind).Where(f => there.Latest(f)?.Stored is not null && part.Values.All(v => v.Fact != f))] : [];

    /// <summary>The values that it puts or leaves in the house as not checked against its sheet, and that were other or checked before.</summary>
    public static ImmutableArray<Fact> TakenUnchecked(House house, PartSheet part)
    {
        var there = part.In(house);
        return [.. part.Beside(house).Values.Where(v => !v.Held && (!IsSame(v, there) || LosesCheck(v, there, IsOtherEdition(part, there))))
            .Select(v => v.Fact)];
    }

    /// <summary>The values that were checked against a sheet, and would no longer be with the part.</summary>
    public static ImmutableArray<Fact> LosesChecked(House house, PartSheet part) => part.In(house) is not { } there ? []
        : [.. TakenUnchecked(house, part).Concat(NotInEdition(house, part)).Where(f => IsChecked(there, f))];

    /// <summary>Where parts come from as a rule.</summary>
    public const string FromFolder = "the kit folder";

    /// <summary>The change that takes it in.</summary>
    /// <param name="house">The house.</param>
    /// <param name="part">The part.</param>
    /// <param name="from">Where it comes from, in words.</param>
    public static Result<Draft> Into(House house, PartSheet part, string from = FromFolder)
    {
        var there = part.In(house);
        var what = there is null ? $"New {KebabCase.Of(part.Kind).Replace('-', ' ')} {part.Name}" : part.Name;
        var draft = Put(new Draft($"{what}, from {from}"), part.Beside(house), there);
        return draft.Edits.IsEmpty ? new Refusal($"{part.Name} is in this house already, value for value{Unchecked(there!)}.") : draft;
    }

    private static string Unchecked(Item there) => SheetValues.NotHeldIn(there).Count() is > 0 and var open
        ? $"; {NumberText.Counted(open, "value of it is", "values of it are")} not checked against the sheet" : "";

    /// <summary>Puts a part into a draft.</summary>
    /// <param name="draft">The draft.</param>
    /// <param name="part">The part.</param>
    /// <param name="there">The part of the house that it is a sheet of; null for a new one.</param>
    public static Draft Put(Draft draft, PartSheet part, Item? there)
    {
        var id = there?.Id;
        if (id is null)
            draft = draft.New(part.Kind, House.RootId, out id).PutStored(id, "name", part.Name).AskingOf(id, part.Kind);
        foreach (var (name, stored) in AboutToPut(part, there))
            draft = draft.PutStored(id, name, stored);
        var other = IsOtherEdition(part, there);
        var edition = part.About.GetValueOrDefault(AboutSheet.Edition) ?? (there is null ? null : SheetMark.EditionOf(there));
        foreach (var value in part.Values)
        {
            var check = Companion.Checked(value.Fact.Name);
            if (!IsSame(value, there))
                draft = draft.PutStored(id, value.Fact.Name, value.Stored);
            if (value.Held && !(there is not null && SheetMark.Of(there, value.Fact) is { } mark && SheetMark.Holds(mark, edition)))
                draft = draft.PutStored(id, check, SheetMark.For(edition));
            else if (!value.Held && LosesCheck(value, there, other))
                draft = draft.PutStored(id, check, null);
        }
        foreach (var fact in SheetValues.Of(part.Kind).Where(f => other && IsChecked(there, f) && part.Values.All(v => v.Fact != f)))
            draft = draft.PutStored(id, Companion.Checked(fact.Name), null);
        return draft;
    }

    /// <summary>What it says of its sheet, and a house does not yet: who checked values, and when, only with values that count as checked.</summary>
    private static IEnumerable<(string Name, string Stored)> AboutToPut(PartSheet part, Item? there) => AboutSheet.Names
        .Where(n => part.About.TryGetValue(n, out var stored) && there?.Latest(n)?.Stored != stored
            && (AboutSheet.WhichSheet.Contains(n) || part.Values.Any(v => v.Held)))
        .Select(n => (n, part.About[n]));

    private static bool IsSame(SheetValue value, Item? there) => there?.Latest(value.Fact)?.Stored == value.Stored;

    private static bool IsChecked(Item? there, Fact fact) => there?.Latest(Companion.Checked(fact.Name))?.Stored is not null;

    private static bool LosesCheck(SheetValue value, Item? there, bool otherEdition) =>
        IsChecked(there, value.Fact) && (otherEdition || !IsSame(value, there));

    /// <summary>What the checks of a house would say after it.</summary>
    public static PartEffect Effect(CheckReport report, Draft draft)
    {
        var after = report.After(HouseLog.Preview(report.House, draft));
        var (was, willBe) = (report.Findings.Select(Key).ToHashSet(), after.Findings.Select(Key).ToHashSet());
        var waived = report.Findings.Where(f => !f.Open).Select(Key).ToHashSet();
        return new([.. after.Findings.Where(f => !was.Contains(Key(f)))], [.. after.Findings.Where(f => f.Open && waived.Contains(Key(f)))],
            [.. report.Findings.Where(f => !willBe.Contains(Key(f)))], report, after);

        static (string, string) Key(Finding finding) => (finding.Check.Id, finding.Subject.Id);
    }
}

/// <summary>A value that another edition of a part's sheet changes.</summary>
/// <param name="Fact">Which value.</param>
/// <param name="Was">As the house shows it now; empty for a blank.</param>
/// <param name="Becomes">As it would show it.</param>
public readonly record struct PartChange(Fact Fact, string Was, string Becomes);

/// <summary>What the checks of a house would say of it otherwise, once a part was taken.</summary>
/// <param name="Come">Findings that are not there now.</param>
/// <param name="Reopen">Findings that are waived now, for figures that would no longer be theirs.</param>
/// <param name="Go">Findings that would no longer be there.</param>
/// <param name="Before">What is said now.</param>
/// <param name="After">What would be said then.</param>
public sealed record PartEffect(ImmutableArray<Finding> Come, ImmutableArray<Finding> Reopen, ImmutableArray<Finding> Go, CheckReport Before, CheckReport After)
{
    /// <summary>
    /// Each finding that comes, opens again or goes: what becomes of it, what it is about and what it says. One that goes because its check passes by values
    /// that nobody checked, or waits then, is no pass: that is said.
    /// </summary>
    public IEnumerable<(string Becomes, Finding Finding, string Said)> Told =>
    [
        .. Come.Select(f => ("Then found", f, Said(After, f))), .. Reopen.Select(f => ("Waived, and then open again", f, Said(After, f))),
        .. Go.Select(Gone),
    ];

    private (string Becomes, Finding Finding, string Said) Gone(Finding finding)
    {
        var (said, values) = (Said(Before, finding), UncheckedBehindGoing(finding));
        return values.Count > 0
            ? (UncheckedValues.Marked("Then no longer found", true), finding,
                $"{said} It passes only by {(values.Count == 1 ? "a value" : "values")} that nobody checked: {string.Join(", ", values)}.")
            : WaitsFor(finding) is { } missing ? ("Then not checked", finding, $"{said} It waits for {missing.In(After.House)}.")
            : ("Then no longer found", finding, said);
    }

    /// <summary>By which unchecked values of sheets a check passes that finds something now; none where it does so by none.</summary>
    private IReadOnlyList<string> UncheckedBehindGoing(Finding finding) =>
        [.. (finding.Found.RestsOn.IsEmpty
            ? After.Unread.Where(u => u.Check.Id == finding.Check.Id && IsOf(u.Subject, finding)).SelectMany(u => u.Values).Distinct()
            : WaitsFor(finding) is null ? finding.Found.RestsOn.Where(IsUnchecked) : []).Select(LabelOf)];

    private bool IsUnchecked(FieldRef value) => After.House.Find(value.Item) is { } part && FactTable.Find(part.Kind, value.Field) is { } fact
        && part.Latest(fact)?.Stored is not null && !SheetMark.Holds(part, fact);

    private string LabelOf(FieldRef value) =>
        After.House.Find(value.Item) is { } part ? $"{FactTable.Find(part.Kind, value.Field)!.Label} of {After.House.NameOf(part)}" : value.Field;

    private Sentence? WaitsFor(Finding finding) =>
        After.Missing.FirstOrDefault(m => m.Check.Id == finding.Check.Id && IsOf(m.Subject, finding))?.NotChecked.Missing;

    // A run is judged under the id of its unit.
    private static bool IsOf(Item judged, Finding finding) => judged.Id == finding.Subject.Id || judged.Id == finding.Subject.Under;

    private static string Said(CheckReport report, Finding finding) => $"{report.House.NameOf(finding.Subject)}: {report.Said(finding)}";

    /// <summary>All of it as counts.</summary>
    public override string ToString() => $"{NumberText.Counted(Come.Length, "finding comes", "findings come")}, "
        + (Reopen.IsEmpty ? "" : $"{NumberText.Counted(Reopen.Length, "waived one opens again", "waived ones open again")}, ")
        + $"{NumberText.Counted(Go.Length, "goes", "go")}{OnlyByUnchecked}.";

    private string OnlyByUnchecked => Go.Count(f => UncheckedBehindGoing(f).Count > 0) is > 0 and var open
        ? $", {NumberText.Plain(open)} only by values that nobody checked" : "";
}
