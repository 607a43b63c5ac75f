using System.Collections.Immutable;
using CsCheck;
using TrimOut.Core.Checks;
using TrimOut.Core.Decisions;
using TrimOut.Core.Facts;
using TrimOut.Core.History;
using TrimOut.Core.Houses;
using TrimOut.Core.Units;

namespace TrimOut.Core.Tests.History;

public class MergeTests
{
    private static readonly string[] Names = ["ada", "bo", "cy"];

    private readonly TwoLaptops _laptops = new(Names);

    [Fact]
    public void WhatBothDidIsThere()
    {
        _laptops.Type("ada", WindowFacts.RoughWidth, "45 1/2");
        _laptops.Type("bo", WindowFacts.RoughHeight, "60");
        var merge = _laptops.Take("ada", "bo");
        Assert.Single(merge.New);
        Assert.Empty(merge.Disagreements);
        Assert.Equal((Length.FromInches(45, 1, 2), Length.FromInches(60)),
            (merge.Merged.House.FindTag("W01")!.RoughWidth!.Value, merge.Merged.House.FindTag("W01")!.RoughHeight!.Value));
    }

    [Fact]
    public void TwoValuesOfOneFactAreAFindingUntilOneIsChosen()
    {
        _laptops.Type("ada", WindowFacts.RoughWidth, "45 1/2");
        _laptops.Type("bo", WindowFacts.RoughWidth, "45 5/8");
        var both = Assert.Single(_laptops.Take("ada", "bo").Disagreements);
        Assert.Equal(["45 1/2\" by Ada on 2026-03-03 08:00", "45 5/8\" by Bo on 2026-03-03 08:00"],
            both.Heads.Select(h => both.Show(h, _laptops["ada"].House)));
        Assert.Contains(CheckReport.Of(_laptops["ada"].House).Findings, f => f.Check.Id == "values-disagree");
        _laptops.Do("ada", house => ChooseValue.Of(house, both, both.Heads[0]));
        Assert.Empty(Disagreement.All(_laptops["ada"].House));
        _laptops.Take("bo", "ada");
        Assert.Empty(Disagreement.All(_laptops["bo"].House));
        Assert.Equal(Length.FromInches(45, 1, 2), _laptops["bo"].House.FindTag("W01")!.RoughWidth);
    }

    [Fact]
    public void TheSameValueFromBothIsNoDisagreement()
    {
        _laptops.Type("ada", WindowFacts.RoughWidth, "45 1/2");
        _laptops.Type("bo", WindowFacts.RoughWidth, "45.5");
        Assert.Empty(_laptops.Take("ada", "bo").Disagreements);
    }

    [Fact]
    public void AValueThatWasSeenAndReplacedIsNoDisagreement()
    {
        _laptops.Type("ada", WindowFacts.RoughWidth, "45 1/2");
        _laptops.Take("bo", "ada");
        _laptops.Type("bo", WindowFacts.RoughWidth, "45 5/8");
        _laptops.Take("ada", "bo");
        Assert.Equal(Length.FromInches(45, 5, 8), _laptops["ada"].House.FindTag("W01")!.RoughWidth);
        Assert.Empty(Disagreement.All(_laptops["ada"].House));
    }

    [Fact]
    public void AClockThatIsYearsWrongChangesNothingInTheOrder()
    {
        _laptops.SetClock("ada", new DateTimeOffset(2046, 1, 1, 0, 0, 0, TimeSpan.Zero));
        _laptops.SetClock("bo", new DateTimeOffset(1999, 1, 1, 0, 0, 0, TimeSpan.Zero));
        _laptops.Type("ada", WindowFacts.RoughWidth, "45 1/2");
        var seen = Merge.Of(_laptops["bo"].Log, _laptops["ada"].Log).Value.Merged;
        var bo = TwoLaptops.Scribe("bo", seen.Changes,
            new Microsoft.Extensions.Time.Testing.FakeTimeProvider(new DateTimeOffset(1999, 1, 1, 0, 0, 0, TimeSpan.Zero)));
        Assert.True(SetFact.Typed(bo.House, bo.House.FindTag("W01")!.Item, WindowFacts.RoughWidth, "45 5/8").Then(bo.Record).Ok);
        var merged = Merge.Of(_laptops["ada"].Log, bo.Log).Value.Merged;
        Assert.Equal(Length.FromInches(45, 5, 8), merged.House.FindTag("W01")!.RoughWidth);
        Assert.Empty(Disagreement.All(merged.House));
        Assert.Equal(1999, merged.Changes[^1].SaidAt.Year);
    }

    [Fact]
    public void AWindowRemovedByOneAndWorkedOnByTheOtherIsSaidAndCanBeBroughtBackWithAllItHad()
    {
        _laptops.Do("ada", house => RemoveItems.Remove(house, house.FindTag("W01")!.Item));
        _laptops.Type("bo", WindowFacts.RoughWidth, "45 1/2");
        var merge = _laptops.Take("ada", "bo");
        Assert.Equal("Ada removed it on 2026-03-03 08:00, while Bo went on with it (Rough width).", Assert.Single(merge.Removals).Show(merge.Merged.House));
        Assert.Empty(_laptops.Take("ada", "bo").Removals);
        Assert.True(_laptops["ada"].Undo().Ok);
        Assert.Equal(Length.FromInches(45, 1, 2), _laptops["ada"].House.FindTag("W01")!.RoughWidth);
    }

    [Fact]
    public void WhatTheOtherCopyKnewOfADisagreementIsNewToThisOneAndToldOnce()
    {
        var laptops = new TwoLaptops("ada", "bo", "cy");
        laptops.Type("bo", WindowFacts.RoughWidth, "45 1/2");
        laptops.Type("cy", WindowFacts.RoughWidth, "45 5/8");
        Assert.Single(laptops.Take("cy", "bo").Disagreements);
        Assert.Single(laptops.Take("ada", "cy").Disagreements);
        Assert.Empty(laptops.Take("ada", "cy").Disagreements);
    }

    [Fact]
    public void WhatGotOneNameOnTwoCopiesIsNamed()
    {
        foreach (var name in new[] { "ada", "bo" })
        {
            _laptops.Do(name, house => AddItems.Window(house, "W09", null));
            foreach (var kind in new[] { ItemKind.Panel, ItemKind.Hub, ItemKind.Remote })
                _laptops.Do(name, house => AddItems.Named(house, kind, "P2"));
        }
        Assert.Equal("window W09, panel P2, hub P2, remote P2", string.Join(", ", _laptops.Take("ada", "bo").Namesakes));
        Assert.Empty(_laptops.Take("ada", "bo").Namesakes);
        var refused = SetLine.Read(_laptops["ada"].House, "W09\tnote\tx");
        Assert.Contains("There are 2 windows W09", refused.Reason);
    }

    [Fact]
    public void AnotherHouseIsNotMerged() =>
        Assert.Contains("have no change in common", Merge.Of(_laptops["ada"].Log, new Testing.TestJob().Scribe.Log).Reason);

    [Fact]
    public void OneNameWithTwoContentsIsRefused()
    {
        _laptops.Type("ada", WindowFacts.RoughWidth, "45 1/2");
        var changed = _laptops["ada"].Log.Changes[^1] with { By = "Somebody" };
        var other = HouseLog.Of(_laptops["ada"].Log.Changes.SetItem(_laptops["ada"].Log.Changes.Count - 1, changed)).Value;
        Assert.Contains("twice with different contents", Merge.Of(_laptops["ada"].Log, other).Reason);
    }

    /// <summary>A week on three laptops: who, what (type, add, remove, undo, redo, take in another's changes), on which of the first windows.</summary>
    internal static readonly Gen<(int Who, int What, int Which, int Value)[]> Weeks =
        Gen.Select(Gen.Int[0, 2], Gen.Int[0, 8], Gen.Int[0, 2], Gen.Int[4, 40]).Array[1, 40];

    internal static HouseLog[] Work((int Who, int What, int Which, int Value)[] week) => Work(week, []);

    private static HouseLog[] Work((int Who, int What, int Which, int Value)[] week, int[] yearsWrong)
    {
        var laptops = new TwoLaptops(Names);
        for (var at = 0; at < yearsWrong.Length; at++)
            laptops.SetClock(Names[at], new DateTimeOffset(2026 + yearsWrong[at], 3, 3, 8, 0, 0, TimeSpan.Zero));
        foreach (var (who, what, which, value) in week)
        {
            var scribe = laptops[Names[who]];
            var window = scribe.House.Windows.ElementAtOrDefault(which);
            switch (what)
            {
                case 0:
                    laptops.Do(Names[who], house => AddItems.Window(house, AddItems.NextTag(house), null));
                    break;
                case 1 when window is not null:
                    laptops.Do(Names[who], house => RemoveItems.Remove(house, window.Item));
                    break;
                case 2:
                    scribe.Undo();
                    break;
                case 3:
                    scribe.Redo();
                    break;
                case 4:
                    laptops.Take(Names[who], Names[which]);
                    break;
                default:
                    if (window is not null)
                        laptops.Do(Names[who],
                            house => SetFact.Typed(house, window.Item, what % 2 == 0 ? WindowFacts.RoughWidth : WindowFacts.RoughHeight, $"{value}"));
                    break;
            }
        }
        return [.. Names.Select(n => laptops[n].Log)];
    }

    private static HouseLog Both(HouseLog a, HouseLog b) => Merge.Of(a, b).Value.Merged;

    private static bool Same(HouseLog a, HouseLog b) => TwoLaptops.Picture(a) == TwoLaptops.Picture(b);

    [Fact]
    public void EitherOrderGivesTheSameHouse() => Weeks.Select(Work).Sample(logs => Same(Both(logs[0], logs[1]), Both(logs[1], logs[0])), iter: 200);

    [Fact]
    public void EitherGroupingGivesTheSameHouse() =>
        Weeks.Select(Work).Sample(logs => Same(Both(Both(logs[0], logs[1]), logs[2]), Both(logs[0], Both(logs[1], logs[2]))), iter: 200);

    [Fact]
    public void MergingAgainChangesNothing() =>
        Weeks.Select(Work).Sample(logs => Same(Both(Both(logs[0], logs[1]), logs[1]), Both(logs[0], logs[1])), iter: 200);

    [Fact]
    public void NoChangeIsLost() => Weeks.Select(Work).Sample(logs =>
        logs.SelectMany(l => l.Changes)
            .All(c => Both(Both(logs[0], logs[1]), logs[2]).Find(c.Id) is { } kept && ChangeJson.Write(kept) == ChangeJson.Write(c)), iter: 100);

    /// <summary>Whatever the laptops' clocks say: the same house as by right ones, and what somebody replaced or undid comes before that.</summary>
    [Fact]
    public void NoWrongClockLosesAnythingOrTurnsCauseAndEffectRound() => Gen.Select(Weeks, Gen.Int[-30, 30].Array[3]).Sample((week, wrong) =>
    {
        var (logs, right) = (Work(week, wrong), Work(week));
        var merged = Both(Both(logs[0], logs[1]), logs[2]);
        var place = merged.Changes.Select((c, at) => (c.Id, at)).ToDictionary(c => c.Id, c => c.at);
        return Same(Timeless(merged), Timeless(Both(Both(right[0], right[1]), right[2])))
            && merged.Changes.All(c => Causes(c).All(cause => place[cause] < place[c.Id]));
    }, iter: 60);

    private static HouseLog Timeless(HouseLog log) => HouseLog.Of(log.Changes.Select(c => c with { SaidAt = default })).Value;

    private static IEnumerable<ChangeId> Causes(Change change) =>
        change.Edits.SelectMany(e => e switch { Edit.Put put => put.Over, Edit.Undo undo => [undo.Of], _ => ImmutableArray<ChangeId>.Empty });

    /// <summary>A value disappears only if somebody who had seen it replaced it or took it back.</summary>
    [Fact]
    public void EveryValueThatNobodyReplacedIsStillThere() => Weeks.Select(Work).Sample(logs =>
    {
        var merged = Both(Both(logs[0], logs[1]), logs[2]);
        var puts = merged.Changes.Where(c => merged.IsInForce(c.Id)).SelectMany(c => c.Edits.OfType<Edit.Put>().Select(p => (c.Id, Put: p))).ToList();
        return puts.Where(p => merged.House.Find(p.Put.Item) is not null)
            .Where(p => !puts.Any(q => q.Put.Item == p.Put.Item && q.Put.Field == p.Put.Field && q.Put.Over.Contains(p.Id)))
            .All(p => merged.House.Find(p.Put.Item)!.Heads(p.Put.Field).Any(h => h.Id == p.Id));
    }, iter: 100);

    // A new house file takes in a copy whole, and a copy that is new takes in nothing.
    [Fact]
    public void AnEmptyHistoryIsTheBeginningOfAnyHouse()
    {
        var log = _laptops["ada"].Log;
        Assert.Equal(log.Changes.Count, Merge.Of(HouseLog.Empty, log).Value.New.Length);
        Assert.Empty(Merge.Of(log, HouseLog.Empty).Value.New);
        Assert.Empty(Merge.Of(HouseLog.Empty, HouseLog.Empty).Value.Merged.Changes);
    }

    [Fact]
    public void TheConflictsAreWhatDisagreesAndWhatWasRemovedAtWork()
    {
        _laptops.Do("ada", house => AddItems.Window(house, "W02", null));
        _laptops.Take("bo", "ada");
        _laptops.Type("ada", WindowFacts.RoughWidth, "45");
        _laptops.Type("bo", WindowFacts.RoughWidth, "46");
        _laptops.Do("ada", house => RemoveItems.Remove(house, house.FindTag("W02")!.Item));
        _laptops.Type("bo", WindowFacts.RoughWidth, "30", "W02");
        var merge = _laptops.Take("ada", "bo");
        Assert.Equal((1, 1, 2), (merge.Disagreements.Length, merge.Removals.Length, merge.Conflicts.Count()));
    }
}
