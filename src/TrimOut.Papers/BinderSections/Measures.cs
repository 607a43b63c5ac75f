using TrimOut.Core.Facts;
using TrimOut.Core.Houses;
using TrimOut.Core.Units;
using TrimOut.Papers.Writing;
using static TrimOut.Papers.Writing.Inline;
using static TrimOut.Papers.Writing.MarkdownWriter;

namespace TrimOut.Papers.BinderSections;

/// <summary>The finished openings as they were measured.</summary>
internal static class Measures
{
    public static Section Section { get; } = new("measures", "Measures", Write);

    private static readonly Fact[] Taken =
        [WindowFacts.WidthTop, WindowFacts.WidthMiddle, WindowFacts.WidthBottom, WindowFacts.HeightLeft, WindowFacts.HeightMiddle, WindowFacts.HeightRight,
            WindowFacts.DiagonalDown, WindowFacts.DiagonalUp, WindowFacts.Depth];

    private static void Write(MarkdownWriter to, PaperData data)
    {
        to.Say("Of the finished openings. Widths at the top, the middle and the bottom; heights at the left, the middle and the right; " +
            "diagonals from the top left and from the bottom left.");
        var read = new TakenMarks();
        to.Filled(["Window", "Mount", "Widths", "Heights", "Diagonals", "Depth", "Overlap each side", "Head above", "Read"],
            data.House.Windows.Where(w => !w.LeftOut).Select(w => Row(
                w.Tag, w.Entry(WindowFacts.Mount),
                All(w, WindowFacts.WidthTop, WindowFacts.WidthMiddle, WindowFacts.WidthBottom),
                All(w, WindowFacts.HeightLeft, WindowFacts.HeightMiddle, WindowFacts.HeightRight),
                All(w, WindowFacts.DiagonalDown, WindowFacts.DiagonalUp),
                w.Entry(WindowFacts.Depth), w.Entry(WindowFacts.OverlapEachSide), w.Entry(WindowFacts.HeadAbove), read.Of(w, Taken))), "No windows yet.");
        read.Write(to);
    }

    /// <summary>Readings that belong together in their order; one that is missing keeps its place.</summary>
    private static Inline All(Window window, params Fact<Length>[] facts) =>
        facts.Any(f => window.Shown(f) is not null) ? window.Sizes(" / ", facts) : NotYet;
}
