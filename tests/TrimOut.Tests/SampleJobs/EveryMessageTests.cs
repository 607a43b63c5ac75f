using TrimOut.Testing;

namespace TrimOut.Tests.SampleJobs;

/// <summary>What a check can say is wrong, and what it advises, some sample shows; else the reason stands here.</summary>
public class EveryMessageTests
{
    /// <summary>What says which fact is missing, and nothing that is wrong.</summary>
    private const string MissingFacts = "NotChecked";

    private const string Copies = "only two copies bring it about; tests of the merge have them";
    private const string OtherSide = "the other side, direction or end of a mistake that a sample shows";
    private const string Count = "one in place of several, or several in place of one";
    private const string Part = "a part of a sentence that a sample shows without it";
    private const string Moment = "advice for a moment in which no sample has that mistake";
    private const string Stage = "a stage in which no sample is: less is known there, or more is done";
    private const string InItsPlace = "where it would be said, a sample says the other sentence of its check";
    private const string Kit = "a sheet that none of the invented kits has";

    /// <summary>What no sample shows, by its check or what it says it with, and why.</summary>
    private static readonly Dictionary<string, string> Silent = new()
    {
        ["Disagreement: PutBy, TakenAwayBy"] = Copies,
        ["RemovedAtWork: BroughtBack, More, WentOn"] = Copies,
        ["PanelNameTwice: OfHubs, OfPanels, OfRemotes, OtherHubName, OtherPanelName, OtherRemoteName"] = Copies,
        ["TagTwice: AnotherTag, NoRoom, OneOther, SeveralOthers"] = Copies,
        ["ValuesDisagree: Differ, Or"] = Copies,
    };

    [Fact]
    public void WhatACheckCanSaySomeSampleShowsOrThereIsAReason()
    {
        var said = SampleJob.Names.SelectMany(n => SampleJob.Open(n).Report.Findings)
            .SelectMany(f => CheckMessages.In(f.Found.Message).Concat(CheckMessages.In(f.Found.Mend))).ToHashSet();
        var silent = CheckMessages.Classes.Where(c => c.Name != MissingFacts)
            .Select(c => (c.Name, Messages: CheckMessages.Found(c).Where(m => !said.Contains(m.Message)).Select(m => m.Name)
                .Order(StringComparer.Ordinal).ToList()))
            .Where(c => c.Messages.Count > 0).Select(c => $"{c.Name}: {string.Join(", ", c.Messages)}").ToHashSet(StringComparer.Ordinal);
        var known = Silent.Keys.ToHashSet(StringComparer.Ordinal);
        Assert.True(known.SetEquals(silent), string.Join('\n',
            silent.Except(known).Select(s => "no sample shows " + s).Concat(known.Except(silent).Select(k => "not so: " + k))));
    }
}
