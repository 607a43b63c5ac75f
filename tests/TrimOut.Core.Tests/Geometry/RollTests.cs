using CsCheck;
using TrimOut.Core.Geometry;
using TrimOut.Core.Units;

namespace TrimOut.Core.Tests.Geometry;

public class RollTests
{
    // D = sqrt(d^2 + 4 t L / pi); worked out independently for tube 50 mm and fabric 0.4 mm.
    [Theory]
    [InlineData(50, 0.4, 1000, 54.857)]
    [InlineData(50, 0.4, 2000, 59.318)]
    [InlineData(50, 0.4, 3000, 63.466)]
    [InlineData(50, 0.4, 3500, 65.441)]
    [InlineData(38, 0.5, 2000, 52.127)]
    public void TheWoundSheetFormulaIsMet(double tube, double fabric, double wound, double diameter) =>
        Assert.Equal((decimal)diameter, Math.Round(Roll.Diameter(Mm(tube), Mm(fabric), Mm(wound)).Millimetres, 3));

    // A published calculator page (calculator.academy): 5 in on a 2 in core at 0.011 in is 1499.396 in, printed 1499.39.
    [Fact]
    public void APublishedExampleIsMet() =>
        Assert.Equal(1499.396m, Math.Round(Roll.Wound(Length.FromInches(5), Length.FromInches(2), Length.FromInches(0.011m)).Inches, 3));

    // 300 mm on 76.2 mm at 0.05 mm: 1322.509 m (inputs published, result worked out).
    [Fact]
    public void ALongRollIsMet() => Assert.Equal(1322.509m, Math.Round(Roll.Wound(Mm(300), Mm(76.2), Mm(0.05)).Metres, 3));

    // Fifteen whole turns of 0.4 mm on 50 mm: 62 mm exactly, 840 pi mm of fabric.
    [Fact]
    public void WholeTurnsComeOutEven()
    {
        var wound = Length.FromMillimetres(840 * (decimal)Math.PI);
        Assert.Equal(62m, Math.Round(Roll.Diameter(Mm(50), Mm(0.4), wound).Millimetres, 6));
        Assert.Equal(62.8m, Math.Round(Roll.RoomToTurn(Mm(50), Mm(0.4), wound).Millimetres, 6));
    }

    // The sum of rings pi (d + (2k - 1) t) is the closed form for whole turns.
    [Fact]
    public void ASumOfRingsIsTheSame() => Gen.Select(Gen.Int[10, 100], Gen.Int[1, 20], Gen.Int[1, 200]).Sample((tube, tenths, turns) =>
    {
        var t = tenths / 10.0;
        var rings = Enumerable.Range(1, turns).Sum(k => Math.PI * (tube + (2 * k - 1) * t));
        Assert.Equal(tube + 2 * turns * t, (double)Roll.Diameter(Mm(tube), Mm(t), Mm(rings)).Millimetres, 1e-5);
    });

    // The length of an Archimedean spiral of pitch t, integrated numerically, is the closed form to well under a turn.
    [Fact]
    public void AnIntegratedSpiralIsTheSame() => Gen.Select(Gen.Int[20, 80], Gen.Int[2, 12], Gen.Int[2, 60]).Sample((tube, tenths, turns) =>
    {
        var (t, steps) = (tenths / 10.0, 20_000);
        double length = 0, step = 2 * Math.PI * turns / steps;
        for (var n = 0; n < steps; n++)
        {
            var r = tube / 2.0 + t / 2 + t * (n + 0.5) * step / (2 * Math.PI);
            length += Math.Sqrt(r * r + Math.Pow(t / (2 * Math.PI), 2)) * step;
        }
        // The middle of the sheet runs half a thickness outside the tube, and climbs one thickness a turn: on average half a turn of it more.
        var closed = Math.PI * (Math.Pow(tube + 2 * (turns + 0.5) * t, 2) - Math.Pow(tube + t, 2)) / (4 * t);
        Assert.InRange(length / closed, 0.999, 1.001);
        Assert.InRange((double)Roll.Wound(Mm(tube + 2 * turns * t), Mm(tube), Mm(t)).Millimetres, length - Math.PI * t * turns * 1.01, length);
    }, iter: 50);

    [Fact]
    public void LengthToDiameterAndBack() => Gen.Select(Gen.Int[10, 100], Gen.Int[1, 20], Gen.Int[100, 10_000]).Sample((tube, tenths, wound) =>
    {
        var (d, t) = (Mm(tube), Mm(tenths / 10.0));
        Assert.InRange((double)Roll.Wound(Roll.Diameter(d, t, Mm(wound)), d, t).Millimetres, wound - 0.001, wound + 0.001);
    });

    [Theory]
    [InlineData(-1, 0.4, 1000)]
    [InlineData(50, -0.4, 1000)]
    [InlineData(50, 0.4, -1)]
    public void LessThanNothingIsRefused(double tube, double fabric, double wound) =>
        Assert.Throws<ArgumentOutOfRangeException>(() => Roll.Diameter(Mm(tube), Mm(fabric), Mm(wound)));

    [Fact]
    public void AFabricOfNoThicknessIsRefused() => Assert.Throws<ArgumentOutOfRangeException>(() => Roll.Wound(Mm(60), Mm(50), Length.Zero));

    private static Length Mm(double millimetres) => Length.FromMillimetres((decimal)millimetres);
}
