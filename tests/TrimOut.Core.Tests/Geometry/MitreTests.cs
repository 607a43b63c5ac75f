using CsCheck;
using TrimOut.Core.Geometry;
using TrimOut.Core.Units;

namespace TrimOut.Core.Tests.Geometry;

public class MitreTests
{
    // Stands out / tan(angle / 2), worked out with a calculator: 3 in at 90, 120, 135 and 150 degrees.
    [Theory]
    [InlineData(90, 3)]
    [InlineData(120, 1.732051)]
    [InlineData(135, 1.242641)]
    [InlineData(150, 0.803848)]
    [InlineData(180, 0)]
    [InlineData(225, 0)]
    public void UnitsThatStandOutAlikeMeetWhereTheirFrontsMeet(int angle, double inches) =>
        Assert.Equal((decimal)inches, Math.Round(Mitre.FromCorner(Length.FromInches(3), angle).Inches, 6));

    [Fact]
    public void JustThereTheyTouchAndAreClear()
    {
        var side = new CornerSide(Mitre.FromCorner(Length.FromInches(3), 135), Length.FromInches(3));
        Assert.Equal(Length.Zero, Mitre.Short(side, side, 135));
        var nearer = side with { FromCorner = side.FromCorner - Length.FromMillimetres(1) };
        Assert.InRange(Mitre.Short(nearer, nearer, 135).Millimetres, 1m, 3m);
    }

    [Fact]
    public void WhatDoesNotStandOutIsInNobodysWay()
    {
        var (flat, deep) = (new CornerSide(Length.FromInches(-5), Length.Zero), new CornerSide(Length.FromInches(-5), Length.FromInches(4)));
        Assert.Equal(Length.Zero, Mitre.Short(flat, deep, 135));
        Assert.Equal(Length.Zero, Mitre.Short(deep, flat, 135));
        Assert.NotEqual(Length.Zero, Mitre.Short(deep, deep, 135));
    }

    // In a square corner the other unit, 4 in deep and 1 in from the corner, takes 4 in of this wall: 3 in are short where this one begins at 1 in.
    [Fact]
    public void InASquareCornerTheDepthOfTheOtherIsTaken() => Assert.Equal(3m,
        Math.Round(Mitre.Short(new(Length.FromInches(1), Length.FromInches(3)), new(Length.FromInches(1), Length.FromInches(4)), 90).Inches, 6));

    [Theory]
    [InlineData(180)]
    [InlineData(270)]
    public void OnAStraightWallAndOutsideACornerNothingIsShort(int angle)
    {
        var side = new CornerSide(Length.FromInches(-1), Length.FromInches(4));
        Assert.Equal(Length.Zero, Mitre.Short(side, side, angle));
        Assert.Equal(Length.Zero, Mitre.FromCorner(Length.FromInches(4), angle));
        Assert.Throws<ArgumentOutOfRangeException>(() => Mitre.Short(side, side, 271));
    }

    [Theory]
    [InlineData(89)]
    [InlineData(271)]
    [InlineData(0)]
    [InlineData(-135)]
    public void AnAngleThatNoRoomHasIsRefused(int angle) => Assert.Throws<ArgumentOutOfRangeException>(() => Mitre.FromCorner(Length.FromInches(3), angle));

    // The same question asked another way: both rectangles drawn from above, one clipped by the other (Sutherland and Hodgman), and what is left measured.
    [Fact]
    public void ClippingOneRectangleByTheOtherSaysTheSame() => Corners.Sample((angle, a1, d1, a2, d2) =>
    {
        var overlap = Overlap(angle, a1, d1, a2, d2);
        var missing = (double)Mitre.Short(new(Mm(a1), Mm(d1)), new(Mm(a2), Mm(d2)), angle).Millimetres;
        if (missing == 0)
        {
            Assert.InRange(overlap, 0, 0.01);
            return;
        }
        // Moved by what is missing they are clear; moved by a little less they are not.
        Assert.InRange(Overlap(angle, a1 + missing + 1e-4, d1, a2, d2), 0, 0.01);
        Assert.True(Overlap(angle, a1 + missing * 0.99, d1, a2, d2) > 0, $"{angle} {a1} {d1} {a2} {d2}: {missing} is more than is needed.");
        Assert.True(overlap > 0);
    }, iter: 5_000);

    [Fact]
    public void AWiderAngleNeverNeedsMoreRoom() => Gen.Select(Gen.Int[90, 179], Gen.Int[1, 300]).Sample((angle, out_) =>
        Assert.True(Mitre.FromCorner(Mm(out_), angle + 1) <= Mitre.FromCorner(Mm(out_), angle)));

    private static readonly Gen<(int Angle, double A1, double D1, double A2, double D2)> Corners =
        Gen.Select(Gen.Int[90, 179], Gen.Int[-100, 200], Gen.Int[1, 150], Gen.Int[-100, 200], Gen.Int[1, 150])
            .Select((angle, a1, d1, a2, d2) => (angle, (double)a1, (double)d1, (double)a2, (double)d2));

    private static Length Mm(double millimetres) => Length.FromMillimetres((decimal)millimetres);

    /// <summary>
    /// The area that two units 2 m long share. The first lies along the x-axis from the corner, the room above it; the second along the other wall, the room to
    /// its right.
    /// </summary>
    private static double Overlap(double angle, double a1, double d1, double a2, double d2)
    {
        const double Long = 2000;
        var (c, s) = (Math.Cos(angle * Math.PI / 180), Math.Sin(angle * Math.PI / 180));
        (double X, double Y) On(double along, double out_) => (along * c + out_ * s, along * s - out_ * c);

        List<(double X, double Y)> shape = [(a1, 0), (a1 + Long, 0), (a1 + Long, d1), (a1, d1)];
        (double X, double Y)[] clip = [On(a2, 0), On(a2, d2), On(a2 + Long, d2), On(a2 + Long, 0)];
        if (Area(clip) < 0)
            Array.Reverse(clip);
        for (var at = 0; at < clip.Length && shape.Count > 0; at++)
            shape = Clip(shape, clip[at], clip[(at + 1) % clip.Length]);
        return shape.Count < 3 ? 0 : Math.Abs(Area([.. shape]));
    }

    private static List<(double X, double Y)> Clip(List<(double X, double Y)> shape, (double X, double Y) from, (double X, double Y) to)
    {
        double Left((double X, double Y) p) => (to.X - from.X) * (p.Y - from.Y) - (to.Y - from.Y) * (p.X - from.X);

        var kept = new List<(double X, double Y)>();
        for (var at = 0; at < shape.Count; at++)
        {
            var (p, q) = (shape[at], shape[(at + 1) % shape.Count]);
            var (l, m) = (Left(p), Left(q));
            if (l >= 0)
                kept.Add(p);
            if (l < 0 != m < 0)
                kept.Add((p.X + (q.X - p.X) * l / (l - m), p.Y + (q.Y - p.Y) * l / (l - m)));
        }
        return kept;
    }

    private static double Area((double X, double Y)[] shape) =>
        Enumerable.Range(0, shape.Length).Sum(n => shape[n].X * shape[(n + 1) % shape.Length].Y - shape[(n + 1) % shape.Length].X * shape[n].Y) / 2;
}
