using TrimOut.Core.Checks;
using TrimOut.Core.Checks.Panels;
using TrimOut.Core.Decisions;
using TrimOut.Core.Facts;
using TrimOut.Core.Phases;
using TrimOut.Core.Units;
using TrimOut.Papers.Writing;

namespace TrimOut.Papers.Tests.Writing;

public class OpenStopsTests
{
    /// <summary>Each paper that somebody works by, and phases whose mistakes would be built by it.</summary>
    public static TheoryData<string, Phase[]> Papers => new()
    {
        { "walk-sheet", [Phase.WalkThrough] },
        { "pull-sheet", [Phase.WalkThrough, Phase.RoughIn] },
        { "test-record", [Phase.RoughIn, Phase.CloseIn, Phase.Power] },
        { "measure-form", [Phase.WalkThrough, Phase.Measure] },
        { "parts-list", [Phase.WalkThrough, Phase.Measure, Phase.Order] },
        { "order-sheet", [Phase.WalkThrough, Phase.Measure, Phase.Order] },
        { "receiving-list", [Phase.Order, Phase.Receive] },
        { "hang-sheet", [Phase.WalkThrough, Phase.Measure, Phase.Order, Phase.Receive, Phase.Hang] },
        { "panel-schedule", [Phase.WalkThrough, Phase.RoughIn, Phase.CloseIn, Phase.Power] },
    };

    [Theory]
    [MemberData(nameof(Papers))]
    public void AStopOfItsPhasesStandsAtItsHead(string id, Phase[] phases)
    {
        var data = SampleJobs.Data("ridge-house");
        var page = PaperList.Find(id)!.Page(data);
        var head = page.QuerySelector("main")!.Children.TakeWhile(e => e.LocalName != "h2").Select(e => e.TextContent).ToList();
        var stops = data.Report.OpenStops.Where(f => phases.Contains(f.Check.Phase)).ToList();
        Assert.NotEmpty(stops);
        Assert.All(stops, stop => Assert.Contains(head, text =>
            text.Contains(stop.Found.Message.For(Words.English.ReaderOf(data.House)), StringComparison.Ordinal)));
        Assert.DoesNotContain("wrong", PaperList.Find(id)!.Write(SampleJobs.Data("orchard-cottage")).Markdown.Split("\n## ")[0], StringComparison.Ordinal);
    }

    /// <summary>A motor that its panel does not fit: the electrician, whoever hangs it and whoever stands at the panel are told.</summary>
    [Theory]
    [InlineData("panel-schedule", "16.5 V")]
    [InlineData("panel-door", "things are wrong that whoever powers a panel is to know: they stand on the panel schedule.")]
    [InlineData("hang-sheet", "16.5 V")]
    public void AMotorThatItsPanelDoesNotFitStandsAtTheHead(string id, string told)
    {
        var job = FinishedHouse.Build().SayOf("Roller", CoveringKindFacts.MotorVolts, "16.5");
        var data = new PaperData(job.Scribe.Log, FinishedHouse.Day, CheckReport.Of(job.House, [new MotorOffSupply()]));
        var head = PaperList.Find(id)!.Write(data).Markdown.Split("\n## ")[0];
        Assert.True(head.Contains(told, StringComparison.Ordinal), head);
    }

    /// <summary>Whoever sticks labels is told where two cables would get the same one, and of nothing that labels don't show.</summary>
    [Fact]
    public void OnTheLabelsStandTheStopsThatAreMendedOnThem()
    {
        var job = FinishedHouse.Build().SayOf("Roller", CoveringKindFacts.MotorVolts, "16.5");
        Assert.DoesNotContain("Stop first", Head(), StringComparison.Ordinal);
        job.Say("W02A", RunFacts.LabelAtWindow, "P1-W01").Say("W02A", RunFacts.LabelAtPanel, "P1-W01");
        Assert.Contains("Stop first", Head(), StringComparison.Ordinal);
        Assert.Contains("P1-W01", Head(), StringComparison.Ordinal);
        Assert.DoesNotContain("16.5", Head(), StringComparison.Ordinal);

        string Head() => PaperList.Find("labels")!.Write(new PaperData(job.Scribe.Log, FinishedHouse.Day, job.Report)).Markdown.Split("\n## ")[0];
    }

    /// <summary>A stop that goes away by a value that nobody read off a sheet: whoever drills by the paper is told which, and where.</summary>
    [Fact]
    public void WhatPassesOnlyByAValueThatNobodyCheckedStandsAtItsHead()
    {
        var job = FinishedHouse.Build().SayOf("Roller", CoveringKindFacts.DepthNeeded, "2");
        string Head(string id) => PaperList.Find(id)!.Write(new PaperData(job.Scribe.Log, FinishedHouse.Day, job.Report)).Markdown.Split("\n## ")[0];
        foreach (var id in (string[])["hang-sheet", "order-sheet", "measure-form"])
        {
            Assert.Contains("**Rests on values that nobody checked.**", Head(id), StringComparison.Ordinal);
            Assert.Matches("\\| Roller +\\| Depth needed 2\"\u00A0\\? +\\| .*W01", Head(id));
            Assert.Contains("nobody checked it against that sheet yet", Head(id), StringComparison.Ordinal);
        }
        // Depth is nothing to whoever pulls and tests cable.
        foreach (var id in (string[])["pull-sheet", "test-record", "panel-schedule"])
            Assert.DoesNotContain("Depth needed", Head(id), StringComparison.Ordinal);
        job.Do(KitCheck.All(job.House, job.House.Units[0].Kind!.Item));
        Assert.DoesNotContain("Rests on", Head("hang-sheet"), StringComparison.Ordinal);
    }

    /// <summary>What is drilled by and what the meter is held against is at the head with every unit, whether a check passes by it or none reads it.</summary>
    [Theory]
    [InlineData("hang-sheet", "Bracket setback 1\"")]
    [InlineData("test-record", "Running current 0.85 A")]
    public void WhatAPrintedFigureRestsOnStandsAtItsHeadWithEveryUnit(string id, string value)
    {
        var job = FinishedHouse.Build().SayOf("Roller", CoveringKindFacts.Setback, "1").SayOf("Roller", CoveringKindFacts.RunningCurrent, "0.85");
        var text = PaperList.Find(id)!.Write(FinishedHouse.Data(job.Scribe.Log)).Markdown.Split("\n## ");
        Assert.Contains("**Rests on values that nobody checked.**", text[0], StringComparison.Ordinal);
        var row = Assert.Single(text[0].Split('\n'), l => l.Contains(value, StringComparison.Ordinal));
        var units = job.House.Units.Where(u => u.Kind is { Name: "Roller" } && (id == "hang-sheet" || u.Run is not null)).Select(u => u.Tag).ToList();
        Assert.NotEmpty(units);
        Assert.True(row.Contains("all with this part", StringComparison.Ordinal) || units.TrueForAll(t => row.Contains(t, StringComparison.Ordinal)), row);
        job.Do(KitCheck.All(job.House, job.House.Units[0].Kind!.Item));
        Assert.DoesNotContain("Rests on", PaperList.Find(id)!.Write(FinishedHouse.Data(job.Scribe.Log)).Markdown.Split("\n## ")[0], StringComparison.Ordinal);
    }

    /// <summary>A width that was ordered as the sheets give it rests on the deduction, wherever it is printed, and so does where the brackets go.</summary>
    [Theory]
    [InlineData("hang-sheet", 5)]
    [InlineData("receiving-list", 1)]
    [InlineData("binder", 1)]
    public void AWidthThatWasOrderedAsOfferedRestsOnWhatTheOfferRestsOn(string id, int marks)
    {
        var job = FinishedHouse.Build().SayOf("Roller", CoveringKindFacts.OrderedInside, "made");
        job.Do(KitCheck.All(job.House, job.House.Units[0].Kind!.Item)).SayOf("Roller", CoveringKindFacts.DeductionInside, "3/8");
        var unit = job.House.Units.First(u => u is { Kind.Name: "Roller", Window: { Mount: Mount.Inside, Units.Length: 1 }, WorkedOutWidth: not null });
        // What it was ordered with stands beside what is typed over that.
        job.Say(unit.Tag, UnitFacts.OrderedOn, "");
        Assert.True(Marks(unit.WorkedOutWidth!.Value) >= marks);
        // Another width rests on nothing but whoever typed it.
        Assert.Equal(0, Marks(unit.WorkedOutWidth!.Value - Length.FromInches(1)));

        int Marks(Length width)
        {
            job.Do(SetFact.Typed(job.House, job.House.Find(unit.Id)!, UnitFacts.OrderWidth, width.Show(DisplayUnits.Inches)));
            return PaperList.Find(id)!.Write(FinishedHouse.Data(job.Scribe.Log)).Markdown.Split("\n## ").Skip(1).SelectMany(s => s.Split('\n'))
                .Where(l => l.StartsWith($"| {unit.Tag} ", StringComparison.Ordinal)).Sum(l => l.Split("\u00A0?").Length - 1);
        }
    }

    [Fact]
    public void LoadsThatNobodyCheckedAreMarkedAtThePanel()
    {
        var job = FinishedHouse.Build().SayOf("Roller", CoveringKindFacts.RunningCurrent, "0.85");
        foreach (var id in (string[])["panel-schedule", "panel-door"])
        {
            string Text() => PaperList.Find(id)!.Write(FinishedHouse.Data(job.Scribe.Log)).Markdown;
            Assert.Contains("0.85 A\u00A0?", Text(), StringComparison.Ordinal);
            Assert.Contains("nobody checked it against that sheet yet", Text(), StringComparison.Ordinal);
        }
    }

    [Theory]
    [InlineData("binder")]
    [InlineData("card")]
    [InlineData("panel-door")]
    public void WhatTheOwnerGetsIsADraftUntilItIsSignedFor(string id)
    {
        var job = FinishedHouse.Build();
        string Head() => PaperList.Find(id)!.Write(FinishedHouse.Data(job.Scribe.Log)).Markdown.Split("\n## ")[0];
        Assert.DoesNotContain("DRAFT", Head(), StringComparison.Ordinal);
        job.Do(SetFact.Typed(job.House, job.House.Job, HouseFacts.AcceptedOn, ""));
        Assert.Contains("DRAFT", Head(), StringComparison.Ordinal);
    }
}
