using TrimOut.Core.Houses;
using TrimOut.Core.Kits;
using TrimOut.Core.Units;
using TrimOut.Screens.Frames;
using TrimOut.Screens.Shell;

namespace TrimOut.Screens.Drawings;

/// <summary>A part of the kit with what waits for it: the values that are blank, those that nobody checked, and which checks of what wait for each.</summary>
internal static class PartCard
{
    private const int MostNames = 8;

    public static void Draw(Area area, Item part, ScreenContext context)
    {
        var y = area.PutWrapped(0, 0, 2, context.House.NameOf(part), Tone.Strong);
        if (SheetValues.IsNoCover(context.House, part))
        {
            area.PutWrapped(0, y, 2, "It stands for no part, so there is no sheet of it.", Tone.Dim);
            return;
        }
        var (blank, unchecked_) = (SheetValues.BlankIn(part).ToList(), SheetValues.NotHeldIn(part).ToList());
        y = area.PutWrapped(0, y, 6, blank.Count == 0 ? "No value is blank." : $"Blank: {string.Join(", ", blank.Select(f => f.Label))}",
            blank.Count == 0 ? Tone.Text : Tone.Caution);
        y = area.PutWrapped(0, y, 8, unchecked_.Count == 0 ? "Every value that is there was checked against the sheet."
            : $"Not checked: {string.Join(", ", unchecked_.Select(f => f.Label))}", Tone.Text) + 1;
        var (missing, unread) = (context.Report.MissingOf(part).ToList(), context.Report.UnreadOf(part).ToList());
        var waiting = missing.Select(m => (m.NotChecked.FillIn!.Field, m.Check.Title, m.Subject))
            .Concat(unread.SelectMany(u => u.Values.Where(v => v.Item == part.Id), (u, v) => (v.Field, u.Check.Title, u.Subject)))
            .GroupBy(w => (w.Field, w.Title)).OrderBy(g => g.Key.Field, StringComparer.Ordinal).ToList();
        if (waiting.Count == 0)
        {
            area.PutWrapped(0, y, 2, "No check waits for a value of it.", Tone.Text);
            return;
        }
        area.PutFit(0, y++, area.Width, $"{NumberText.Counted(missing.Count + unread.Count, "check waits", "checks wait")} for its values:", Tone.Heading);
        foreach (var group in waiting)
        {
            if (y >= area.Height)
                return;
            var names = group.Select(m => context.House.NameOf(m.Subject)).Distinct().ToList();
            var more = names.Count > MostNames ? $" and {NumberText.Plain(names.Count - MostNames)} more" : "";
            var label = Core.Facts.FactTable.Find(part.Kind, group.Key.Field)?.Label ?? group.Key.Field;
            y = area.PutWrapped(0, y, 3, $"{label}: {group.Key.Title}, of {string.Join(", ", names.Take(MostNames))}{more}", Tone.Text);
        }
    }
}
