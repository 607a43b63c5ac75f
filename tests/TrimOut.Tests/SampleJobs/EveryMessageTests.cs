using TrimOut.Core.Checks;
using TrimOut.Core.History;
using TrimOut.Core.Wording;
using TrimOut.Testing;

namespace TrimOut.Tests.SampleJobs;

/// <summary>What a check can say is wrong, and what it advises, some sample shows; else the reason stands here.</summary>
public class EveryMessageTests
{
    /// <summary>What says which fact is missing, and nothing that is wrong.</summary>
    private const string MissingFacts = "NotChecked";

    private const string Copies = "only two copies bring it about; tests of the merge have them";

    /// <summary>What no sample shows, by its check or what it says it with, and why.</summary>
    private static readonly Dictionary<string, string> Silent = new()
    {
        ["Disagreement: PutBy, TakenAwayBy"] = Copies,
        ["RemovedAtWork: BroughtBack, More, WentOn"] = Copies,
        ["PanelNameTwice: OfHubs, OfPanels, OfRemotes, OtherHubName, OtherPanelName, OtherRemoteName"] = Copies,
        ["ValuesDisagree: Differ, Or"] = Copies,
        ["TagTwice: NoRoom, OneOther, SeveralOthers"] = Copies,
        ["ChangedSinceOrder: CallToday"] = "what the samples change after an acknowledgement they change once its box is there",
        ["OrderedWithoutSize: Without"] = "of each unit on order the samples have its size",
        ["PartsPastOpening: WithGapsPast, WithGapsPastKnown, WithGapsPastPlumb"] = "in the samples the parts leave their gap, or are too wide without one",
        ["OrderTooLate: OrderedAfter"] = "of each unit on order the samples have the box, or the day on which it is expected",
        ["BoxLate: NoTimeToFit"] = "no sample says how many days fitting takes",
        ["LatitudeOffZone: Exchanged, OtherSign, PutRight, TooFar"] = "only canal house has its place typed, and that is right",
        ["LongitudeOffZone: OtherSign"] = "only canal house has its place typed, and so near to Greenwich the sign does not tell",
        ["OpeningsOffCount: FindIt"] = "it is said while every wall is open; each sample has a part that was closed before its openings were counted",
    };

    [Fact]
    public void WhatACheckCanSaySomeSampleShowsOrThereIsAReason()
    {
        var said = SampleJob.Names.SelectMany(n => EverSaid(SampleJob.Open(n).Log)).ToHashSet();
        var silent = CheckMessages.Classes.Where(c => c.Name != MissingFacts)
            .Select(c => (c.Name, Messages: CheckMessages.Found(c).Where(m => !said.Contains(m.Message)).Select(m => m.Name)
                .Order(StringComparer.Ordinal).ToList()))
            .Where(c => c.Messages.Count > 0).Select(c => $"{c.Name}: {string.Join(", ", c.Messages)}").ToHashSet(StringComparer.Ordinal);
        var known = Silent.Keys.ToHashSet(StringComparer.Ordinal);
        Assert.True(known.SetEquals(silent), string.Join('\n',
            silent.Except(known).Select(s => "no sample shows " + s).Concat(known.Except(silent).Select(k => "not so: " + k))));
    }

    /// <summary>What is said of a house today, and of the house as it stood with each change that was taken back: who goes back to it reads that.</summary>
    private static IEnumerable<Message> EverSaid(HouseLog log)
    {
        var takenBack = log.Changes.SelectMany(c => c.Edits).OfType<Edit.Undo>().Select(e => e.Of).ToHashSet();
        var report = CheckReport.Of(log.House);
        foreach (var house in log.Changes.Where(c => takenBack.Contains(c.Id)).Select(c => log.At(c.Id)!).Append(log.House))
        {
            report = report.After(house);
            foreach (var message in report.Findings.SelectMany(f => CheckMessages.In(f.Found.Message).Concat(CheckMessages.In(f.Found.Mend))))
                yield return message;
        }
    }
}
