using TrimOut.Core.Geometry;
using TrimOut.Core.Units;

namespace TrimOut.Core.Tests.Geometry;

public class StretchTests
{
    [Fact]
    public void PartsLieInTheirOrderWithBothEndsKeptClearAndTheRestBetweenThem() => Assert.Equal(
        [new Stretch(Mm(2), Mm(502)), new Stretch(Mm(510), Mm(910)), new Stretch(Mm(918), Mm(997))],
        Stretch.SideBySide(Mm(1000), [Mm(500), Mm(400), Mm(79)], Mm(2), Mm(3)));

    [Fact]
    public void PartsThatDoNotGoInLieAgainstEachOther() => Assert.Equal(
        [new Stretch(Mm(0), Mm(600)), new Stretch(Mm(600), Mm(1200))], Stretch.SideBySide(Mm(1000), [Mm(600), Mm(600)], Mm(0), Mm(0)));

    [Fact]
    public void OneAloneLiesAtItsEndAllowance() =>
        Assert.Equal([new Stretch(Mm(2), Mm(902))], Stretch.SideBySide(Mm(1000), [Mm(900)], Mm(2), Mm(3)));

    private static Length Mm(int millimetres) => Length.FromMillimetres(millimetres);
}
