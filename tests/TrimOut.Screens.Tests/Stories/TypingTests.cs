using Microsoft.Extensions.Time.Testing;
using TrimOut.Core.Facts;
using TrimOut.Core.Houses;
using TrimOut.Core.Units;
using TrimOut.Screens.Cables;
using TrimOut.Screens.Panels;
using TrimOut.Screens.Sheets;
using TrimOut.Testing;

namespace TrimOut.Screens.Tests.Stories;

/// <summary>What is typed is understood as people write it, and what it leads to is at hand.</summary>
public class TypingTests
{
    private static readonly FakeTimeProvider Clock = new(new DateTimeOffset(2026, 11, 25, 9, 0, 0, TimeSpan.Zero));

    private static TerminalUser At(TestJob job, int width = 80, int height = 24) => new(new TestDesk(Clock), job.Scribe, width, height);

    private static TestJob Job() => new TestJob().Window("W01").Window("W02").Window("W03");

    private static TestJob WithoutOutputs(TestJob job)
    {
        foreach (var type in job.House.ItemsOf(ItemKind.PanelType).Where(t => t.Latest(PanelTypeFacts.Outputs.Name)?.Stored is not null).ToList())
            job.Do(Core.Decisions.SetFact.Typed(job.House, type, PanelTypeFacts.Outputs, ""));
        return job;
    }

    [Fact]
    public void ARunOfThreeLegsIsOneLine()
    {
        using var user = At(Job());
        user.Press("4", "l").Write("up 8, across 46 in wall, down 3 1/2 ft").Sees("57.5 ft").Press("enter");
        var run = user.House.Runs[0];
        Assert.Equal(3, run.Legs.Length);
        Assert.Equal(Length.FromInches(690), run.LegsLength);
        Assert.Equal(CablePlace.InWall, run.Legs[1].Place);
        Assert.IsType<CablesScreen>(user.Shell.Screen);
    }

    [Fact]
    public void LegsOfANeighbourComeWithOneKey()
    {
        using var user = At(Job());
        user.Press("4", "l").Type("up 8, across 46 in wall, down 3").Press("down", "l", "up").Press("enter");
        Assert.Equal(user.House.Runs[0].LegsLength, user.House.Runs[1].LegsLength);
        Assert.Equal(CablePlace.InWall, user.House.Runs[1].Legs[1].Place);
    }

    [Fact]
    public void AnEmptyLineAddsOneLegToBeFilledIn()
    {
        using var user = At(Job());
        user.Press("4", "l", "enter");
        Assert.Equal(LegFacts.Direction, ((SheetScreen)user.Shell.Screen).Current!.Fact);
        Assert.Single(user.House.Runs[0].Legs);
    }

    [Fact]
    public void ALegWithoutALengthSaysWhyTheRunHasNone()
    {
        using var user = At(Job());
        user.Press("4", "l").Type("up 8").Press("l", "enter", "esc").Sees("leg 2: ?").Sees("No length is known of leg 2, so no length of the run is.");
    }

    [Theory]
    [InlineData("today", "2026-11-25")]
    [InlineData("+3", "2026-11-28")]
    [InlineData("fri", "2026-11-27")]
    [InlineData("14 mar 27", "2027-03-14")]
    [InlineData("12/25/26", "2026-12-25")]
    public void ADayIsTypedAsPeopleSayIt(string typed, string day)
    {
        using var user = At(Job());
        user.Press("0", "/").Write("drywall starts").Press("enter", "enter").Write(typed).Sees($"day, {day}").Press("enter");
        Assert.Equal(day, user.House.Job.Latest(HouseFacts.DrywallOn.Name)!.Stored);
    }

    [Fact]
    public void ADayThatCanBeTwoIsAskedFor()
    {
        using var user = At(Job());
        user.Press("0", "/").Write("drywall starts").Press("enter", "enter").Type("12/1/26").Sees("can be two days: type 2026-12-01 or 2026-01-12.");
        Assert.NotNull(user.Shell.Typing);
        user.Type("2026-12-01");
        Assert.Equal("2026-12-01", user.House.Job.Latest(HouseFacts.DrywallOn.Name)!.Stored);
    }

    [Fact]
    public void TwoUnitsOfOneOpeningAreOneLine()
    {
        using var user = At(new TestJob());
        user.Press("n").Sees("2 units").Type("W01 roller left 35 3/8 x 60 SW floor inside panel 2 units @Kitchen").Press("esc");
        var units = user.House.FindTag("W01")!.Units;
        Assert.Equal(["W01A", "W01B"], units.Select(u => u.Tag));
        Assert.All(units, u => Assert.Equal((Side.Left, PowerSource.Panel, "Roller"), (u.LeadSide!.Value, u.Power!.Value, u.Kind!.Name)));
    }

    [Fact]
    public void APanelWithoutOutputsAsksForThemAtOnce()
    {
        using var user = At(WithoutOutputs(Job()));
        user.Press("3", "n", "enter").Sees("Outputs of P1").Sees("Nothing lands on P1 before that is known.").Press("esc");
        Assert.IsType<PanelsScreen>(user.Shell.Screen);
        user.Press("end", "t").Sees("Outputs of P1").Type("8").Sees("Land W03 on").Type("P1 2");
        Assert.Equal("W03", user.House.Panels[0].RunAt(2)!.Unit.Tag);
    }

    [Fact]
    public void TheKeyThatSpreadsRunsAsksForOutputsFirst()
    {
        using var user = At(WithoutOutputs(Job().Add(ItemKind.Panel, "P1")));
        user.Press("3", "p").Sees("Outputs of P1").Type("8").Sees("3 runs spread").Press("p");
        Assert.All(user.House.Runs, r => Assert.NotNull(r.Output));
    }

    [Fact]
    public void WhoIsExpectedAndNotKnownBecomesAContactThatIsSaid()
    {
        using var user = At(Job());
        user.Press("P", "N").Write("fri Hang upstairs @Zed").Sees("Zed (new contact)").Press("enter");
        var visit = Assert.Single(user.House.Visits);
        Assert.Equal((new DateOnly(2026, 11, 27), "Hang upstairs"), (visit.On!.Value, visit.Name));
        Assert.Equal("Zed", Assert.Single(visit.Expected).Name);
        user.Sees("Nobody is chosen to call after handover yet");
    }

    [Fact]
    public void AnEscapeWindowThatNobodyCanTellYetIsRecordedAndStaysListed()
    {
        using var user = At(new TestJob().Window("W01"));
        user.Press("enter", "/").Write("escape").Press("enter", "enter").Type("not known yet");
        Assert.Contains(user.Shell.Context.Report.Missing, m => m.Check.Id == "escape-stays-shut");
        Assert.DoesNotContain(Core.Phases.StepList.Find("opening-seen")!.Evidence.Where(f => f == WindowFacts.Escape),
            f => user.House.FindTag("W01")!.Item.Latest(f.Name)?.Stored is null);
    }
}
