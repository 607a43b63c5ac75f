using TrimOut.Core.Facts;
using TrimOut.Core.Houses;
using TrimOut.Core.Units;
using TrimOut.Testing;

namespace TrimOut.Core.Tests;

/// <summary>Houses that tests begin with: one good window W01, brought to a phase, so that a test changes the one fact it is about.</summary>
internal static class Jobs
{
    /// <summary>Walked: a roller 36 x 60 in, inside, lead and entry left, the entry 1 in from the jamb, 2 in back and 1 in below the head.</summary>
    public static TestJob Walked(string tag = "W01", TestJob? job = null) => (job ?? new TestJob()).Window(tag)
        .Say(tag, WindowFacts.Mount, "inside").Say(tag, WindowFacts.RoughWidth, "36\"").Say(tag, WindowFacts.RoughHeight, "60\"")
        .Say(tag, UnitFacts.LeadSide, "left").Say(tag, UnitFacts.EntrySide, "left")
        .Say(tag, UnitFacts.EntryFromJamb, "1\"").Say(tag, UnitFacts.EntryBack, "2\"").Say(tag, UnitFacts.EntryBelowHead, "1\"");

    /// <summary>Roughed in: 60 ft of 16/2 in walls, tails 36 in and 72 in, labelled with the tag, tested.</summary>
    public static TestJob Roughed(string tag = "W01", TestJob? job = null) => Walked(tag, job)
        .Say(tag, RunFacts.Cable, "16/2").Legs(tag, ("60 ft", CablePlace.InWall))
        .Say(tag, RunFacts.TailAtWindow, "36\"").Say(tag, RunFacts.TailAtPanel, "72\"")
        .Say(tag, RunFacts.MainsDistance, "12\"").Say(tag, RunFacts.HoleEdge, "1 1/2\"").Say(tag, RunFacts.HoleTo, "side")
        .Say(tag, RunFacts.LabelAtWindow, tag).Say(tag, RunFacts.LabelAtPanel, tag)
        .Say(tag, RunFacts.FirstLoop, "0.57");

    /// <summary>Measured twice: 36 x 60 in and square, 5 in deep, nothing in the way, to get a fascia of 3 in.</summary>
    public static TestJob Measured(string tag = "W01", TestJob? job = null)
    {
        job = Walked(tag, job);
        foreach (var fact in (Fact[])[WindowFacts.WidthTop, WindowFacts.WidthMiddle, WindowFacts.WidthBottom, WindowFacts.WidthAgain])
            job.Say(tag, fact, "36\"");
        foreach (var fact in (Fact[])[WindowFacts.HeightLeft, WindowFacts.HeightMiddle, WindowFacts.HeightRight, WindowFacts.HeightAgain])
            job.Say(tag, fact, "60\"");
        return job.Say(tag, WindowFacts.DiagonalDown, "69 31/32\"").Say(tag, WindowFacts.DiagonalUp, "69 31/32\"")
            .Say(tag, WindowFacts.Depth, "5\"").Say(tag, WindowFacts.InTheWay, "none").Say(tag, UnitFacts.HeadCover, "Fascia 3 in");
    }

    /// <summary>Ordered as the measures give it.</summary>
    public static TestJob Ordered(string tag = "W01", TestJob? job = null) =>
        Measured(tag, job).Say(tag, UnitFacts.OrderWidth, "36\"").Say(tag, UnitFacts.OrderHeight, "60\"");

    /// <summary>A house with one ten-output panel P1.</summary>
    public static TestJob WithPanel(this TestJob job, string name = "P1") => job.Add(ItemKind.Panel, name);

    /// <summary>Takes a value away.</summary>
    public static TestJob Forget(this TestJob job, string tag, Fact fact) => job.Say(tag, fact, "");

    /// <summary>A house in millimetres.</summary>
    public static TestJob Metric() => new(DisplayUnits.Millimetres);
}
