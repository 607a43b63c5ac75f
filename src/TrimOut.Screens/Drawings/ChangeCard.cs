using System.Globalization;
using TrimOut.Core.Facts;
using TrimOut.Core.History;
using TrimOut.Core.Houses;
using TrimOut.Core.Phases;
using TrimOut.Core.Units;
using TrimOut.Screens.Frames;
using TrimOut.Screens.Shell;

namespace TrimOut.Screens.Drawings;

/// <summary>A change of the history: each value with what it replaced, and what it was about as it stood after the change.</summary>
internal static class ChangeCard
{
    /// <summary>A longer history is not gone back in while keys wait: its first step replays all of it.</summary>
    private const int LongestToGoBack = 4000;

    /// <summary>Draws it.</summary>
    /// <param name="area">Where.</param>
    /// <param name="count">How many changes there were with this one.</param>
    /// <param name="context">What is seen.</param>
    public static void Draw(Area area, int count, ScreenContext context)
    {
        var log = context.Log;
        var change = log.Changes[count - 1];
        var y = area.PutWrapped(0, 0, 2, string.Create(CultureInfo.InvariantCulture, $"Change {count}: {change.SaidAt:yyyy-MM-dd HH:mm}, {change.By}"),
            Tone.Strong);
        y = area.PutWrapped(0, y, 3, change.What, Tone.Text) + 1;
        var then = log.Changes.Count <= LongestToGoBack ? log.At(count) : null;
        var seen = then ?? context.House;
        foreach (var edit in change.Edits.TakeWhile(_ => y < area.Height - 1))
        {
            if (InWords(edit, log, seen, context.Glyphs) is { } words)
                y = area.PutWrapped(0, y, 2, words, Tone.Text);
        }
        if (then is null)
        {
            area.PutWrapped(0, y + 1, 2, "Enter shows the house as it stood.", Tone.Dim);
            return;
        }
        y = area.PutWrapped(0, y + 1, 2, $"The house then: {NumberText.Counted(then.Windows.Count(w => !w.LeftOut), "window")} and "
            + $"{NumberText.Counted(then.Units.Length, "unit")} in {NumberText.Counted(then.Rooms.Length, "room")}, "
            + $"{NumberText.Counted(then.Runs.Length, "home run")}.", Tone.Dim);
        if (UnitOf(change, then) is { } unit && area.Height - y > UnitCard.LeastDrawing)
        {
            y = area.PutWrapped(0, y + 1, 1, $"{unit.Tag} as it stood:", Tone.Heading);
            WindowDrawing.Draw(area.Rows(y, Math.Min(16, area.Height - y)), unit, context.Glyphs);
        }
    }

    /// <summary>The unit that a change was about; null where it was about none.</summary>
    public static Unit? UnitOf(Change change, House house) => change.Edits.OfType<Edit.Put>().Select(p => house.Find(p.Item)).Select(item => item switch
    {
        { Kind: ItemKind.Unit } => house.FindUnit(item.Id),
        { Kind: ItemKind.Run } => house.FindUnit(item.Under),
        { Kind: ItemKind.Leg } when house.Find(item.Under) is { } run => house.FindUnit(run.Under),
        { Kind: ItemKind.Window } => house.FindWindow(item.Id)?.Units.FirstOrDefault(),
        _ => null,
    }).FirstOrDefault(unit => unit is not null);

    private static string? InWords(Edit edit, HouseLog log, House house, Glyphs glyphs) => edit switch
    {
        Edit.Add add when house.Find(add.Item) is { } item => $"added: {house.NameOf(item)} ({KebabCase.Of(add.Kind).Replace('-', ' ')})",
        Edit.Undo undo when log.Find(undo.Of) is { } of => $"takes back: {of.What}",
        Edit.Put put when put.Field == Item.RemovedField && house.Find(put.Item) is { } item =>
            $"{house.NameOf(item)}: {(put.Value is null ? "brought back" : "removed")}",
        Edit.Put put when house.Find(put.Item) is { } item && FactTable.Find(item.Kind, put.Field) is { } fact =>
            $"{house.NameOf(item)}: {LabelOf(fact, put.Field, house)}: {Was(put, log, fact, house)} {glyphs.Arrow} {Show(fact, put.Value, house)}",
        _ => null,
    };

    /// <summary>A detail by its label; of those that there is one of for each step or item, which one.</summary>
    private static string LabelOf(Fact fact, string field, House house) => !fact.IsKeyed ? fact.Label
        : field[fact.Field("").Length..] is var key && StepList.Find(key) is { } step ? step.Label
        : house.Find(key) is { } of ? $"{fact.Label} {house.NameOf(of)}" : fact.Label;

    /// <summary>What the value replaced, by the changes that it says it replaces.</summary>
    private static string Was(Edit.Put put, HouseLog log, Fact fact, House house) =>
        put.Over.Select(log.Find).OfType<Change>().SelectMany(c => c.Edits).OfType<Edit.Put>().Where(p => p.Item == put.Item && p.Field == put.Field)
            .Select(p => Show(fact, p.Value, house)).Distinct().ToList() is { Count: > 0 } was ? string.Join(" and ", was) : "blank";

    private static string Show(Fact fact, string? stored, House house) => stored is null ? "blank"
        : fact.ShowStored(stored, house);
}
