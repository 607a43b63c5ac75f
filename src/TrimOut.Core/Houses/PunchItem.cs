using TrimOut.Core.Facts;
using TrimOut.Core.Phases;

namespace TrimOut.Core.Houses;

/// <summary>One thing to mend, written by hand.</summary>
public sealed class PunchItem(House house, Item item) : Subject(house, item)
{
    /// <summary>The item that it is about.</summary>
    public Item? About => House.Find(Item.Under);

    /// <summary>The phase that it holds up.</summary>
    public Phase? Phase => Item.Get(PunchFacts.Phase);

    /// <summary>Whether it was mended.</summary>
    public bool Done => Item.Get(PunchFacts.State) == PunchState.Done;

    /// <summary>Whether something is still to be mended: not where it reads "none" or "nichts".</summary>
    public bool Open => !Done && !AbsenceWords.SayNothing(Item.Get(PunchFacts.What) ?? "?");
}

/// <summary>A finding passed with a reason and initials.</summary>
public sealed class Waiver(House house, Item item) : Subject(house, item)
{
    /// <summary>The id of the item that the finding is about.</summary>
    public string About => Item.Under;

    /// <summary>The id of the check.</summary>
    public string? Check => Item.Get(WaiverFacts.Check);

    /// <summary>What the finding said when it was waived.</summary>
    public string? Figures => Item.Get(WaiverFacts.Figures);

    /// <summary>The figures that it was waived with, exact and without words; null in a waiver of a release before there were these.</summary>
    public string? Arguments => Item.Get(WaiverFacts.Arguments);

    /// <summary>Why it may stay.</summary>
    public string? Reason => Item.Get(WaiverFacts.Reason);

    /// <summary>Who says so.</summary>
    public string? Initials => Item.Get(WaiverFacts.Initials);
}
