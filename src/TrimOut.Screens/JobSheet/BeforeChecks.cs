using TrimOut.Core.Units;
using TrimOut.Screens.Frames;
using TrimOut.Screens.Shell;

namespace TrimOut.Screens.JobSheet;

/// <summary>
/// The job sheet while its checks are not done: the units by their names, and that they are being checked. No mark, no count and no color that could be
/// taken for a judgment.
/// </summary>
/// <remarks>It holds texts alone: the house is read by the checks while it is drawn.</remarks>
/// <param name="Context">What it is of.</param>
/// <param name="House">The house's name.</param>
/// <param name="Says">What goes on.</param>
/// <param name="Rows">The first rows: a room, or a unit under it.</param>
internal sealed record BeforeChecks(ScreenContext Context, string House, string Says, IReadOnlyList<(string Text, bool IsRoom)> Rows)
{
    /// <summary>More rows than this are on no terminal.</summary>
    private const int MostRows = 200;

    public static BeforeChecks Of(JobSheetScreen screen, ScreenContext context)
    {
        var rows = JobSheetRows.Of(screen, context).Take(MostRows)
            .Select(r => (r.Unit is { } unit ? $"{unit.Tag}  {unit.Kind?.Name ?? "-"}" : r.Text.Trim(), r.IsRoom)).ToList();
        return new(context, context.House.Name, $"Checking {NumberText.Counted(context.House.Units.Length, "unit")}. Nothing here is judged yet.", rows);
    }

    public void Draw(Area all)
    {
        all.Fill(0, 0, all.Width, Tone.Bar);
        var x = all.Put(1, 0, TextWidth.Fit($"TrimOut  {House}", all.Width / 2), Tone.Bar) + 2;
        all.PutFit(x, 0, all.Width - x, $"{Context.Glyphs.Arrow} Job sheet  checking ...", Tone.Key);
        all.PutFit(1, 1, all.Width - 1, Says, Tone.Strong);
        var list = all.Rows(3, all.Height - 4);
        for (var y = 0; y < Math.Min(Rows.Count, list.Height); y++)
            list.PutFit(Rows[y].IsRoom ? 0 : 1, y, list.Width - 1, Rows[y].Text, Rows[y].IsRoom ? Tone.Heading : Tone.Text);
        all.Fill(0, all.Height - 1, all.Width, Tone.Bar);
    }
}
