namespace TrimOut.TrueHouse.Tests.Truth;

/// <summary>A place in the plane of an opening, in millimetres from its lower left corner; the room side is the viewer's.</summary>
public readonly record struct Place(double X, double Y);

/// <summary>The outline of an opening as it was built: corners and the middles of its jambs, against the clock from the lower left.</summary>
public sealed class Polygon(IReadOnlyList<Place> corners)
{
    /// <summary>Its corners.</summary>
    public IReadOnlyList<Place> Corners { get; } = corners;

    /// <summary>An opening that is nearly a rectangle.</summary>
    /// <param name="width">Of the sill.</param>
    /// <param name="height">In the middle.</param>
    /// <param name="lean">How far the head stands to the right of the sill.</param>
    /// <param name="taper">How much narrower the head is.</param>
    /// <param name="bow">How far each jamb comes in at the middle.</param>
    /// <param name="slope">How much higher the right side is.</param>
    public static Polygon Opening(double width, double height, double lean = 0, double taper = 0, double bow = 0, double slope = 0) => new(
    [
        new(0, 0), new(width, 0), new(width + (lean / 2) - (taper / 4) - bow, height / 2), new(width + lean - (taper / 2), height + (slope / 2)),
        new(lean + (taper / 2), height - (slope / 2)), new((lean / 2) + (taper / 4) + bow, height / 2),
    ]);

    /// <summary>What a tape held level reads at a height above the sill.</summary>
    public double WidthAt(double y) => Span(Cuts(y, p => p.Y, p => p.X));

    /// <summary>What a tape held upright reads at a distance from the left.</summary>
    public double HeightAt(double x) => Span(Cuts(x, p => p.X, p => p.Y));

    /// <summary>From the top left to the bottom right.</summary>
    public double DiagonalDown => Apart(Corners[4], Corners[1]);

    /// <summary>From the bottom left to the top right.</summary>
    public double DiagonalUp => Apart(Corners[0], Corners[3]);

    /// <summary>The widest that hangs plumb and level in it from head to sill.</summary>
    public double PlumbWidth => Math.Min(Corners[1].X, Math.Min(Corners[2].X, Corners[3].X)) - Math.Max(Corners[0].X, Math.Max(Corners[4].X, Corners[5].X));

    /// <summary>How far the head stands to one side of the sill.</summary>
    public double Lean => (Corners[4].X - Corners[0].X + (Corners[3].X - Corners[1].X)) / 2;

    /// <summary>Its height at the middle.</summary>
    public double Height => HeightAt((Corners[0].X + Corners[1].X) / 2);

    /// <summary>Its width at the middle.</summary>
    public double Width => WidthAt(Height / 2);

    private List<double> Cuts(double at, Func<Place, double> along, Func<Place, double> across)
    {
        var cuts = new List<double>();
        for (var n = 0; n < Corners.Count; n++)
        {
            var (a, b) = (Corners[n], Corners[(n + 1) % Corners.Count]);
            var (from, to) = (along(a), along(b));
            if ((from <= at) == (to <= at))
                continue;
            cuts.Add(across(a) + ((across(b) - across(a)) * (at - from) / (to - from)));
        }
        return cuts;
    }

    private static double Span(List<double> cuts) => cuts.Count < 2 ? throw new InvalidOperationException("The tape misses the opening.")
        : cuts.Max() - cuts.Min();

    private static double Apart(Place a, Place b) => Math.Sqrt(((a.X - b.X) * (a.X - b.X)) + ((a.Y - b.Y) * (a.Y - b.Y)));
}
