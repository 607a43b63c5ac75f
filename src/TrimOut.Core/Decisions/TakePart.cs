using System.Collections.Immutable;
using TrimOut.Core.Checks;
using TrimOut.Core.Facts;
using TrimOut.Core.History;
using TrimOut.Core.Houses;
using TrimOut.Core.Kits;
using TrimOut.Core.Units;

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

    /// <summary>The change that takes it in.</summary>
    public static Result<Draft> Into(House house, PartSheet part)
    {
        var there = part.In(house);
        var what = there is null ? $"New {KebabCase.Of(part.Kind).Replace('-', ' ')} {part.Name}" : part.Name;
        var draft = Put(new Draft($"{what}, from the kit folder"), part, there);
        return draft.Edits.IsEmpty ? new Refusal($"{part.Name} is in this house already, value for value.") : draft;
    }

    /// <summary>Puts a part into a draft.</summary>
    /// <param name="draft">The draft.</param>
    /// <param name="part">The part.</param>
    /// <param name="there">The part of the house that it is a sheet of; null for a new one.</param>
    public static Draft Put(Draft draft, PartSheet part, Item? there)
    {
        var id = there?.Id;
        if (id is null)
            draft = draft.New(part.Kind, House.RootId, out id).PutStored(id, "name", part.Name).AskingOf(id, part.Kind);
        foreach (var (name, stored) in part.About.Where(a => there?.Latest(a.Key)?.Stored != a.Value))
            draft = draft.PutStored(id, name, stored);
        foreach (var value in part.Values)
        {
            var (same, check) = (there?.Latest(value.Fact)?.Stored == value.Stored, Companion.Checked(value.Fact.Name));
            if (!same)
                draft = draft.PutStored(id, value.Fact.Name, value.Stored);
            var was = there?.Latest(check)?.Stored is not null;
            if (value.Held && !was)
                draft = draft.PutStored(id, check, "yes");
            else if (!value.Held && was && !same)
                draft = draft.PutStored(id, check, null);
        }
        return draft;
    }

    /// <summary>What the checks of a house would say after it.</summary>
    public static PartEffect Effect(CheckReport report, Draft draft)
    {
        var after = report.After(HouseLog.Preview(report.House, draft));
        var (was, willBe) = (report.Findings.Select(Key).ToHashSet(), after.Findings.Select(Key).ToHashSet());
        var waived = report.Findings.Where(f => !f.Open).Select(Key).ToHashSet();
        return new([.. after.Findings.Where(f => !was.Contains(Key(f)))], [.. after.Findings.Where(f => f.Open && waived.Contains(Key(f)))],
            [.. report.Findings.Where(f => !willBe.Contains(Key(f)))]);

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
public sealed record PartEffect(ImmutableArray<Finding> Come, ImmutableArray<Finding> Reopen, ImmutableArray<Finding> Go)
{
    /// <summary>All of it as counts.</summary>
    public override string ToString() => $"{NumberText.Counted(Come.Length, "finding comes", "findings come")}, "
        + (Reopen.IsEmpty ? "" : $"{NumberText.Counted(Reopen.Length, "waived one opens again", "waived ones open again")}, ")
        + $"{NumberText.Counted(Go.Length, "goes", "go")}.";
}
