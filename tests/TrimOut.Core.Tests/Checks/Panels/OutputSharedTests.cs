using TrimOut.Core.Checks.Panels;
using TrimOut.Core.Facts;
using TrimOut.Testing;

namespace TrimOut.Core.Tests.Checks.Panels;

public class OutputSharedTests
{
    private static readonly OutputShared Check = new();

    public static Example Finds => new(() => Two("1", "2"), j => j.Say("W02", RunFacts.Output, "1"));

    public static Example Passes => new(() => Two("1", "2"), j => j.Say("W02", RunFacts.Output, "3"));

    [Fact]
    public void OneRunOnAnOutputIsFine() => Two("1", "2").Fine(Check, "W01");

    [Fact]
    public void TwoRunsOnOneAreAStopForBoth()
    {
        var job = Two("3", "3");
        Assert.Equal("P1 output 3 feeds W01, W02; the sheet allows 1.", job.Fault(Check, "W01").Message);
        job.Fault(Check, "W02");
    }

    [Fact]
    public void WhereTheSheetAllowsTwoTheyAreFine() => Two("3", "3").SayOf("Invented supply", PanelTypeFacts.UnitsPerOutput, "2").Fine(Check, "W01");

    [Fact]
    public void WhatTheSheetAllowsMustBeKnown() =>
        Two("3", "3").SayOf("Invented supply", PanelTypeFacts.UnitsPerOutput, "").Lacks(Check, "W01", "units per output of Invented supply in the kit");

    private static TestJob Two(string first, string second) => new TestJob().Window("W01").Window("W02").WithPanel()
        .Say("W01", RunFacts.Panel, "P1").Say("W01", RunFacts.Output, first).Say("W02", RunFacts.Panel, "P1").Say("W02", RunFacts.Output, second);
}
