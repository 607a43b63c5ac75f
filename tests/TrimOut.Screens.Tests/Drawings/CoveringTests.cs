using TrimOut.Core.Facts;
using TrimOut.Core.Houses;
using TrimOut.Screens.Drawings;
using TrimOut.Screens.Frames;
using TrimOut.Testing;

namespace TrimOut.Screens.Tests.Drawings;

/// <summary>Kinds and mounts are drawn unlike each other.</summary>
public class CoveringTests
{
    private static TestJob Hung(string kind, string mount)
    {
        var job = new TestJob();
        if (job.House.ItemsOf(ItemKind.CoveringKind).All(k => job.House.NameOf(k) != kind))
            job.Add(ItemKind.CoveringKind, kind);
        return job.Window("W01", kind: kind).Say("W01", WindowFacts.RoughWidth, "48").Say("W01", WindowFacts.RoughHeight, "60")
            .Say("W01", WindowFacts.Mount, mount).Say("W01", UnitFacts.LeadSide, "left");
    }

    private static string[] Drawn(TestJob job, Glyphs? glyphs = null)
    {
        var frame = new Frame(50, 20);
        WindowDrawing.Draw(frame.All, job.House.Units[0], glyphs ?? Glyphs.Drawn);
        return frame.ToText().Split('\n');
    }

    [Theory]
    [InlineData("Roller", nameof(CoveringLook.Cloth))]
    [InlineData("Cellular", nameof(CoveringLook.Cells))]
    [InlineData("Wood blind", nameof(CoveringLook.Slats))]
    [InlineData("Drapery", nameof(CoveringLook.Folds))]
    [InlineData("Something else", nameof(CoveringLook.Cloth))]
    public void AKindHasTheLookThatItsSheetAndItsNameGiveIt(string kind, string look) =>
        Assert.Equal(look, CoveringLooks.Of(Hung(kind, "inside").House.Units[0].Kind).ToString());

    [Fact]
    public void EveryLookAndMountGivesAnotherPicture()
    {
        foreach (var glyphs in (Glyphs[])[Glyphs.Drawn, Glyphs.Ascii])
        {
            var pictures = (from kind in (string[])["Roller", "Cellular", "Wood blind", "Drapery"]
                            from mount in (string[])["inside", "outside"]
                            select string.Join('\n', Drawn(Hung(kind, mount), glyphs))).ToList();
            Assert.Equal(pictures.Count, pictures.Distinct().Count());
        }
    }

    [Fact]
    public void AnInsideMountHangsInTheOpeningAndAnOutsideMountHidesItsEdge()
    {
        var inside = Drawn(Hung("Roller", "inside"));
        Assert.Matches("^ *┌─+┐$", inside[0]);
        Assert.Matches("│◆█+▌│", inside[1]);
        var outside = Drawn(Hung("Roller", "outside"));
        Assert.Matches("^ *◆█+▌$", outside[0]);
        Assert.Matches("^ *▒+$", outside[2]);
        Assert.Equal(inside[0].Trim().Length, outside[0].Trim().Length);
        Assert.Matches("│ +│", outside[16]);
    }

    [Fact]
    public void SlatsLieAcrossCellsAlternateAndFoldsLeaveTheMiddleOpen()
    {
        Assert.Matches("│═+│", Drawn(Hung("Wood blind", "inside"))[3]);
        var cells = Drawn(Hung("Cellular", "inside"));
        Assert.Matches("│▒+│", cells[2]);
        Assert.Matches("│░+│", cells[3]);
        Assert.Matches("│[║▒]+ +[║▒]+│", Drawn(Hung("Drapery", "inside"))[12]);
    }
}
