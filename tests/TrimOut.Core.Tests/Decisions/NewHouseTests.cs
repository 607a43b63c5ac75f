using TrimOut.Core.Checks;
using TrimOut.Core.Decisions;
using TrimOut.Core.Facts;
using TrimOut.Core.History;
using TrimOut.Core.Houses;
using TrimOut.Core.Kits;
using TrimOut.Core.Units;
using TrimOut.Testing;

namespace TrimOut.Core.Tests.Decisions;

public class NewHouseTests
{
    private static readonly Fact[] GivenByGeometryOrStandard = [CoveringKindFacts.RaisedForm, CableTypeFacts.Conductor, RemoteTypeFacts.Gangs];

    public static TheoryData<DisplayUnits> Units => [.. Enum.GetValues<DisplayUnits>()];

    [Theory]
    [MemberData(nameof(Units))]
    public void EveryValueOfANewKitIsBlankButWhatGeometryOrAStandardGives(DisplayUnits units)
    {
        var kit = new Draft("").WithBlankKit(units).Edits.OfType<Edit.Put>()
            .Where(p => p.Field != "name" && Companion.Beside(p.Field) is null).Select(p => p.Field).Distinct();
        Assert.Equal(GivenByGeometryOrStandard.Select(f => f.Name), kit);
    }

    [Fact]
    public void ANewHouseInMillimetresHasCablesByCrossSection()
    {
        var store = new MemoryStore();
        var scribe = new Scribe(store, TimeProvider.System, "Ash");
        Assert.True(NewHouse.Begin("Kanalhaus", DisplayUnits.Millimetres).Then(scribe.Record).Ok);
        Assert.All(scribe.House.ItemsOf(ItemKind.CableType), c => Assert.IsType<ConductorSize.Metric>(c.Get(CableTypeFacts.Conductor)));
    }

    [Fact]
    public void ABlankIsWaitedForAndNeverAPass()
    {
        var job = BlankHouse.With("W01").Say("W01", UnitFacts.HeadCover, "Fascia").Say("W01", RunFacts.Cable, "16/2");
        var report = job.Report;
        Assert.False(report.WaitingForSheets.None);
        Assert.NotEmpty(report.MissingOf(job.Part(ItemKind.CoveringKind, "Roller")));
        // Whatever passes in a blank house passes because of what was said of the house, not for want of a sheet.
        var bySheet = AllChecks.All.Where(c => c.Info.Source.Title == Source.MakersSheet && c.Info.Id != "kit-unchecked");
        Assert.DoesNotContain(bySheet.SelectMany(c => c.Run(job.House)), r => r.Outcome is Outcome.Fine);
    }

    [Fact]
    public void AHeadCoverWhoseSheetWasNotReadIsNotNoHeadCover()
    {
        var job = BlankHouse.With("W01").SayOf("Roller", CoveringKindFacts.DepthNeeded, "2").Say("W01", WindowFacts.Depth, "4")
            .Say("W01", UnitFacts.HeadCover, "Fascia");
        var fascia = job.Part(ItemKind.HeadCover, "Fascia");
        Assert.Contains(job.Report.MissingOf(fascia), m => m.Check.Id == "roll-past-head-cover");
        Assert.Contains(job.Report.MissingOf(fascia), m => m.Check.Id == "stands-out-of-reveal");
        job.Say("W01", UnitFacts.HeadCover, "None");
        Assert.DoesNotContain(job.Report.Missing, m => m.Check.Id == "roll-past-head-cover");
    }

    [Fact]
    public void NoneIsTakenForAHeadCoverWhereTheHouseHasNoSuchPartAndAddsItOnce()
    {
        var job = BlankHouse.With("W01", "W02");
        job.Do(RemoveItems.Remove(job.House, job.Part(ItemKind.HeadCover, "None")));
        Assert.Contains("None", UnitFacts.HeadCover.Options(job.House).Select(o => o.Shown));
        job.Say("W01", UnitFacts.HeadCover, "none").Say("W02", UnitFacts.HeadCover, "none");
        Assert.All(job.House.Units, u => Assert.True(u.HeadCover!.IsNone));
        Assert.Equal(["Fascia", "None", "Valance"], job.House.ItemsOf(ItemKind.HeadCover).Select(job.House.NameOf).Order());
    }

    [Fact]
    public void AMissingSupplyIsAskedOfThePanelsSheetWhileNoPanelIsThere()
    {
        var job = BlankHouse.With("W01").Say("W01", RunFacts.Cable, "16/2").SayOf("16/2", CableTypeFacts.Stranding, "stranded")
            .SayOf("Roller", CoveringKindFacts.LeastVolts, "9").SayOf("Roller", CoveringKindFacts.RunningCurrent, "0.4")
            .SayOf("Roller", CoveringKindFacts.StartingCurrent, "0.6");
        var volts = Assert.Single(job.Report.Missing, m => m.Check.Id == "volts-short-at-unit");
        Assert.Equal(FieldRef.To(job.Part(ItemKind.PanelType, "Panel"), PanelTypeFacts.Supply), volts.NotChecked.FillIn);
    }

    [Fact]
    public void EighteenImportedWindowsWithoutKindsWait()
    {
        var job = BlankHouse.With();
        for (var n = 1; n <= 18; n++)
            job.Do(AddItems.Window(job.House, $"W{n:00}", null));
        Assert.All(job.House.Units, u => Assert.False(Waiting.Of(job.Report.MissingAbout(u)).None));
        Assert.True(job.Report.Waiting.Checks >= 18);
    }
}
