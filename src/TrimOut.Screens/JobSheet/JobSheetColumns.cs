using TrimOut.Core.Houses;
using TrimOut.Core.Phases;
using TrimOut.Screens.Frames;

namespace TrimOut.Screens.JobSheet;

/// <summary>Where the columns of the sheet stand: as wide as what this house has in them, as far as there is room.</summary>
/// <param name="Kind">Where the kind stands.</param>
/// <param name="Marks">Where the marks of the phases stand.</param>
/// <param name="Counts">Where stops and cautions are counted.</param>
/// <param name="Next">Where the next step stands; beyond the edge of a narrow sheet.</param>
/// <param name="Width">How wide the sheet is.</param>
internal readonly record struct JobSheetColumns(int Kind, int Marks, int Counts, int Next, int Width)
{
    /// <summary>Where the tag stands.</summary>
    public const int Tag = 1;

    private const int CountCells = 7;

    /// <summary>Fewer cells for the next step say nothing; the card beside the sheet says it whole.</summary>
    private const int LeastNext = 16;

    /// <summary>A card beside the sheet needs so much for its drawing and its sentences.</summary>
    private const int LeastCard = 39;

    /// <summary>And where the next step stands on the sheet, so much.</summary>
    private const int WideCard = 56;

    private static readonly int LongestStep = StepList.All.Where(s => s.Subject == ItemKind.Unit).Max(s => TextWidth.Of(s.Label));

    /// <summary>The columns for a house on a screen so wide.</summary>
    public static JobSheetColumns For(House house, int screen)
    {
        var most = screen - LeastCard;
        var tag = Math.Clamp(house.Units.Select(u => TextWidth.Of(u.Tag)).DefaultIfEmpty().Max(), 4, screen >= 100 ? 20 : 8);
        var marks = PhaseNames.All.Count + 1;
        var kind = Math.Clamp(house.Units.Select(u => TextWidth.Of(u.Kind?.Name ?? "")).DefaultIfEmpty().Max(), 4,
            Math.Max(4, Math.Min(24, most - Tag - tag - marks - CountCells - 2)));
        var kindAt = Tag + tag + 1;
        var marksAt = kindAt + kind + 1;
        var countsAt = marksAt + marks;
        var nextAt = countsAt + CountCells;
        var wide = Math.Min(nextAt + LongestStep + 1, screen - WideCard);
        return wide >= nextAt + LeastNext
            ? new(kindAt, marksAt, countsAt, nextAt, wide)
            : new(kindAt, marksAt, countsAt, screen, Math.Max(most - 2, nextAt - 1));
    }

    /// <summary>
    /// The names of the columns, and the numbers of the phases: read downwards in two lines, or in one line only the last figure of each.
    /// </summary>
    public void DrawHeading(Area area, Phase? shown)
    {
        var last = area.Height - 1;
        area.Put(Tag, last, "Unit", Tone.Dim);
        area.Put(Kind, last, "Kind", Tone.Dim);
        foreach (var phase in PhaseNames.All)
        {
            var number = Ribbon.Number(phase);
            for (var y = 0; y < number.Length; y++)
                area.Put(Marks + (int)phase, last + 1 - number.Length + y, number[y].ToString(), phase == shown ? Tone.Selected : Tone.Dim);
        }
        if (Next < area.Width)
            area.Put(Next, last, "Next step", Tone.Dim);
    }
}
