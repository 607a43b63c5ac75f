using TrimOut.Core.Checks;
using TrimOut.Core.Decisions;
using TrimOut.Core.Facts;
using TrimOut.Core.History;
using TrimOut.Core.Houses;
using TrimOut.Core.Wording;
using TrimOut.Testing;

namespace TrimOut.Core.Tests.Checks;

public class OldWaiversTests
{
    private static readonly Message One = new("It says {0}.");
    private static readonly Message Two = new("It says {0}; {1}.");

    [Fact]
    public void WhatWasTypedIsNeverTakenForSeveralFigures()
    {
        Arg[] typed = [Arg.Typed("a\", \"b"), Arg.Typed("a"), Arg.Typed("b"), Arg.Typed("a\\"), Arg.Typed("a\"; \"b"), Arg.Typed("\\\", \\\"")];
        var all = typed.Select(t => One.With(t)).Concat(typed.SelectMany(a => typed.Select(b => Two.With(a, b))))
            .Concat(typed.SelectMany(a => typed.Select(b => One.With(Arg.All([a, b])))))
            .Concat([One.With(Arg.Value(RoomFacts.Name, "x, y")), One.With(Arg.All([Arg.Value(RoomFacts.Name, "x"), Arg.Value(RoomFacts.Name, "y")])),
                One.With(Two.With(Arg.Value(RoomFacts.Name, "x"), Arg.Value(RoomFacts.Name, "y"))), One.With(Arg.Value(RoomFacts.Name, "(x; y)")),
                Two.With(Arg.Value(RoomFacts.Name, "x"), Arg.Value(RoomFacts.Name, "y")), One.With(Arg.Value(RoomFacts.Name, "x; y"))]).ToList();
        // A list has no order.
        Assert.Equal(all.Count - typed.Length * (typed.Length - 1) / 2, all.Select(s => s.Figures).Distinct().Count());
    }

    [Fact]
    public void AWaiverWhoseFiguresAreVeryManyHoldsForJustThese()
    {
        string Figures(int last) => One.With(Arg.All(Enumerable.Range(0, 2000).Append(last).Select(n => Arg.Number(n)))).Figures;
        Assert.True(Figures(1).Length < 100);
        Assert.Equal(Figures(1), Figures(1));
        Assert.NotEqual(Figures(1), Figures(2));
    }

    // As it lies in a file of the release before: what was typed has no escapes. Such a waiver keeps its meaning, and gets no other.
    [Theory]
    [InlineData("\"X\", \"Y\"; \"Z\"", "It says \"X\", \"Y\" at the window and \"Z\" in the mechanical room.", true)]
    [InlineData("\"X\", \"Y\"; \"Z\"", "It says \"X\" at the window and \"Z\" in the mechanical room.", false)]
    [InlineData("\"X\", \"Y\"; \"Q\"", "It says \"X\", \"Y\" at the window and \"Q\" in the mechanical room.", false)]
    public void AWaiverOfTheReleaseBeforeHoldsForWhatItWasGivenFor(string arguments, string said, bool holds)
    {
        var job = Jobs.Roughed().Say("W01", RunFacts.LabelAtWindow, "X\", \"Y").Say("W01", RunFacts.LabelAtPanel, "Z");
        Finding Found() => job.Report.Findings.Single(f => f.Check.Id == "label-ends-differ");
        Assert.Equal("[\"X\\\", \\\"Y\"; \"Z\"]", Found().Found.Message.Figures);
        Give(job, Found(), said, arguments);
        Assert.Equal(holds, !Found().Open);
    }

    [Fact]
    public void AnotherNameOfWhatTwoLaptopsDisagreeAboutOpensNothing()
    {
        var job = Jobs.Walked();
        var unit = job.Unit("W01").Id;
        var (roller, cellular) = (Kind(job, "Roller"), Kind(job, "Cellular"));
        Change By(string device, string kind) => new(new ChangeId(device, 1), 500, DateTimeOffset.UnixEpoch, "Ash", "kind",
            [new Edit.Put(unit, UnitFacts.Kind.Name, kind, [.. job.House.Find(unit)!.Heads(UnitFacts.Kind.Name).Select(h => h.Id)])]);
        var log = HouseLog.Of([.. job.Scribe.Log.Changes, By("a", roller), By("b", cellular)]).Value;
        var said = Disagreeing(log.House).Found.Message.In(log.House);
        Assert.Contains("Roller by Ash", said, StringComparison.Ordinal);
        var house = HouseLog.Preview(log.House, new Draft("as it lies in a file").New(ItemKind.Waiver, unit, out var id)
            .Put(id, WaiverFacts.Check, "values-disagree").Put(id, WaiverFacts.Figures, said));
        Assert.False(Disagreeing(house).Open);
        house = HouseLog.Preview(house, new Draft("renamed").PutStored(roller, "name", "Roller, blackout"));
        Assert.Contains("Roller, blackout by Ash", Disagreeing(house).Found.Message.In(house), StringComparison.Ordinal);
        Assert.False(Disagreeing(house).Open);
        // Now the words of that day are about another part.
        Assert.True(Disagreeing(HouseLog.Preview(house, new Draft("another").PutStored(Kind(job, "Wood blind"), "name", "Roller"))).Open);

        static string Kind(TestJob job, string name) => job.House.ItemsOf(ItemKind.CoveringKind).Single(i => job.House.NameOf(i) == name).Id;
        static Finding Disagreeing(House house) => CheckReport.Of(house).Findings.Single(f => f.Check.Id == "values-disagree");
    }

    [Fact]
    public void WaiversOfEarlierReleasesAreHeldAgainstTheirWordsOnlyOnceAndWhenTheirItemsAreTouched()
    {
        var job = Jobs.Roughed().Say("W01", RunFacts.TailAtWindow, "12");
        Jobs.Roughed("W02", job).Say("W02", RunFacts.TailAtWindow, "12");
        foreach (var finding in job.Report.Findings.Where(f => f.Check.Id == "tail-under-half-width").ToList())
            Give(job, finding, finding.Found.Message.In(job.House), null);
        var report = CheckReport.Of(job.House);
        Assert.Equal(2, report.WaiversWorkedOut);
        CheckReport After(string tag, Fact fact, string typed)
        {
            report = report.After(job.Say(tag, fact, typed).House);
            Assert.Equal(CheckReport.Of(job.House).Findings.Select(f => f.Open), report.Findings.Select(f => f.Open));
            return report;
        }
        Assert.Equal(0, After("W01", UnitFacts.HubName, "Left").WaiversWorkedOut);
        Assert.Equal(0, After("W02", WindowFacts.Tag, "W09").WaiversWorkedOut);
        Assert.Equal(1, After("W01", RunFacts.TailAtWindow, "13").WaiversWorkedOut);
        Assert.Equal(0, After("W01", UnitFacts.HubName, "Right").WaiversWorkedOut);
        Assert.Single(report.Findings, f => f is { Open: true, Check.Id: "tail-under-half-width" });
    }

    private static void Give(TestJob job, Finding finding, string said, string? arguments)
    {
        var draft = new Draft("as it lies in a file").New(ItemKind.Waiver, finding.Subject.Id, out var id)
            .Put(id, WaiverFacts.Check, finding.Check.Id).Put(id, WaiverFacts.Figures, said);
        job.Do(arguments is null ? draft : draft.Put(id, WaiverFacts.Arguments, arguments));
    }
}
