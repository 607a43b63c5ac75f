using System.Collections.Immutable;
using TrimOut.Core;
using TrimOut.Core.Decisions;
using TrimOut.Core.Facts;
using TrimOut.Core.History;
using TrimOut.Core.Houses;

namespace TrimOut.HouseFile.Schedules;

/// <summary>What importing a schedule would do: shown before anything is saved, and saved as one change or not at all.</summary>
/// <param name="Draft">The change; without edits when no window could be read.</param>
/// <param name="Windows">The windows that it adds.</param>
/// <param name="NewRooms">The rooms that it adds, in walking order.</param>
/// <param name="Problems">What could not be read, by line.</param>
/// <param name="Understood">What was read in a way that the user should confirm.</param>
/// <param name="Columns">Each field with the column that it is taken from.</param>
/// <param name="Unused">Headers of columns that nothing is taken from.</param>
public sealed record SchedulePlan(
    Draft Draft,
    ImmutableArray<PlannedWindow> Windows,
    ImmutableArray<string> NewRooms,
    ImmutableArray<ScheduleProblem> Problems,
    ImmutableArray<string> Understood,
    ImmutableArray<PlannedColumn> Columns,
    ImmutableArray<string> Unused)
{
    /// <summary>The sheet of a spreadsheet that it was read from; null of another file.</summary>
    public string? Sheet { get; init; }

    /// <summary>What a revised schedule says otherwise than the house, and what comes of it.</summary>
    public ImmutableArray<RevisedValue> Revised { get; init; } = [];

    /// <summary>
    /// Tags of windows of the house that a revised schedule does not have, but for those that are left out; nothing is done to them unless somebody says what.
    /// </summary>
    public ImmutableArray<string> Missing { get; init; } = [];

    /// <summary>
    /// Of those that are missing the ones that are on order, here, or have a cable in the wall, with which of these it is: none of them is left out unless
    /// somebody says so of that one.
    /// </summary>
    public ImmutableDictionary<string, string> Standing { get; init; } = ImmutableDictionary<string, string>.Empty;

    /// <summary>The plan without the rows of some windows, and with what becomes of those that the schedule no longer has.</summary>
    /// <param name="house">The house.</param>
    /// <param name="left">Tags of windows of which nothing is taken.</param>
    /// <param name="gone">What becomes of each window that is missing; one that is standing is noted where the others are left out.</param>
    /// <param name="on">The day of the schedule.</param>
    /// <returns>That, or which tag is nowhere in it.</returns>
    public Result<SchedulePlan> Choosing(House house, IReadOnlyCollection<string> left, GoneAs gone, DateOnly on)
    {
        bool Leaves(string tag) => left.Contains(tag, SameName.Comparer);
        if (left.Except([.. Windows.Select(w => w.Tag), .. Revised.Select(r => r.Tag)], SameName.Comparer).FirstOrDefault() is { } nowhere)
            return new Refusal($"The schedule brings nothing of {nowhere}: there is nothing to leave.");
        ImmutableArray<PlannedWindow> windows = [.. Windows.Where(w => !Leaves(w.Tag))];
        ImmutableArray<RevisedValue> values =
            [.. Revised.Select(r => r.KeptBecause is null && Leaves(r.Tag) ? r with { KeptBecause = "left, as you chose" } : r)];
        var edits = Windows.Where(w => Leaves(w.Tag)).SelectMany(w => w.Edits).Concat(Revised.Where(r => Leaves(r.Tag)).SelectMany(r => r.Edits));
        return TakeRows.Of(Draft, edits, windows.Length, values.Count(v => v.KeptBecause is null),
            Missing.Select(t => house.FindTag(t)).OfType<Window>().Select(w => (w, As(w, gone))), on)
            .Then<SchedulePlan>(draft => this with
            {
                Draft = draft,
                Windows = windows,
                Revised = values,
                NewRooms = [.. draft.Edits.OfType<Edit.Put>().Where(p => p.Field == RoomFacts.Name.Name && draft.Edits.OfType<Edit.Add>()
                    .Any(a => a.Kind == ItemKind.Room && a.Item == p.Item)).Select(p => p.Value!)],
                Gone = gone,
                GoneIsNew = gone != GoneAs.Left && Missing.Any(t =>
                    house.FindTag(t) is { } window && !(As(window, gone) == GoneAs.Noted && TakeRows.IsNoted(window))),
            });
    }

    private GoneAs As(Window window, GoneAs gone) => gone == GoneAs.LeftOut && Standing.ContainsKey(window.Tag) ? GoneAs.Noted : gone;

    /// <summary>What becomes of the windows that are missing.</summary>
    public GoneAs Gone { get; private init; }

    private bool GoneIsNew { get; init; }

    /// <summary>Whether it changes anything: a window whose note says already that it is gone is noted no second time.</summary>
    public bool Changes => !Windows.IsEmpty || Revised.Any(r => r.KeptBecause is null) || GoneIsNew;
}

/// <summary>A value that a revised schedule gives otherwise than the house has it.</summary>
/// <param name="Line">The line of the file.</param>
/// <param name="Tag">The window.</param>
/// <param name="Label">The detail.</param>
/// <param name="Here">What the house has; empty where it has none.</param>
/// <param name="There">What the schedule says.</param>
/// <param name="KeptBecause">Why the house keeps its own; null where the schedule's is taken.</param>
public sealed record RevisedValue(int Line, string Tag, string Label, string Here, string There, string? KeptBecause)
{
    /// <summary>
    /// What taking it does to the house: part of the plan's change, or, where the house keeps its own, what somebody may take over it after all; nothing
    /// where it can't be taken alone.
    /// </summary>
    public ImmutableArray<Edit> Edits { get; init; } = [];
}

/// <summary>One window of an import.</summary>
/// <param name="Line">The line of the file.</param>
/// <param name="Tag">Its tag.</param>
/// <param name="Room">Its room; null when none is said.</param>
/// <param name="Width">Its rough width as shown; empty when not known.</param>
/// <param name="Height">Its rough height as shown; empty when not known.</param>
public sealed record PlannedWindow(int Line, string Tag, string? Room, string Width, string Height)
{
    /// <summary>What adding it does to the house, but for its room.</summary>
    public ImmutableArray<Edit> Edits { get; init; } = [];

    /// <summary>What is said of its unit, as shown: kind, lead side, power; empty where nothing is.</summary>
    public string Unit { get; init; } = "";
}

/// <summary>A cell or a row that could not be read.</summary>
/// <param name="Line">The line of the file, from 1.</param>
/// <param name="Column">The header of the column.</param>
/// <param name="Reason">What is wrong with it.</param>
/// <param name="RowLost">Whether the whole row was left out rather than this one value.</param>
public sealed record ScheduleProblem(int Line, string Column, string Reason, bool RowLost)
{
    /// <summary>Whether what was read all the same was taken as it stands, and is to be looked at.</summary>
    public bool Taken { get; init; }

    /// <summary>Whether one window was taken where it says how many.</summary>
    public bool OneTaken { get; init; }

    /// <summary>Whether nothing of the file could be read for it.</summary>
    public bool NothingRead { get; init; }

    /// <summary>What came of it, in a sentence.</summary>
    public string Outcome => NothingRead ? "Nothing was read." : RowLost ? "The row was left out." : OneTaken ? "One was taken."
        : Taken ? "It was taken as it stands." : "Left empty.";
}

/// <summary>The column that a field is taken from.</summary>
/// <param name="Field">The field.</param>
/// <param name="Header">Its header; null where somebody said that it is taken from none.</param>
/// <param name="Name">What names that column the next time; empty for none.</param>
/// <param name="Said">The unit that was said for it, such as "=mm"; empty where none was, or the header says so itself.</param>
/// <param name="BareUnit">The unit that its bare numbers are taken for, such as "mm"; empty where it holds no lengths.</param>
public sealed record PlannedColumn(ScheduleField Field, string? Header, string Name, string Said, string BareUnit)
{
    /// <summary>Where it is taken from, in words.</summary>
    public string From => Header is null ? "from no column" : $"from \"{Header}\"{(BareUnit.Length > 0 ? $", bare numbers in {InWords(BareUnit)}" : "")}";

    private static string InWords(string unit) => unit switch
    {
        "in" => "inches",
        "ft" => "feet",
        _ => unit,
    };
}
