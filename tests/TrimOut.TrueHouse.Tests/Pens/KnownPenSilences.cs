namespace TrimOut.TrueHouse.Tests.Pens;

/// <summary>
/// Facts of which a slip of the pen can spoil the job and pass in silence: nothing else that is recorded speaks against such a value. A test holds this
/// list exactly for the houses of the gate.
/// </summary>
public static class KnownPenSilences
{
    private const string SecondReader = "a second person who reads the sheet's line";
    private const string OwnersList = "the owner's list of what was chosen, read once more before the order is sent";
    private const string SecondPass = "a second pass of the tape";

    /// <summary>By the fact, what would show it.</summary>
    public static IReadOnlyDictionary<string, string> All { get; } = new Dictionary<string, string>
    {
        ["window/head-above"] = SecondPass,
        ["window/overlap-each-side"] = SecondPass,
        ["unit/entry-back"] = "the same reading once more, after drywall",
        ["unit/entry-below-head"] = "the same reading once more, after drywall",
        ["unit/entry-from-jamb"] = "nothing where the slip is under 2 in, which plaster and trim may take; else the reading after drywall",
        ["unit/fabric"] = OwnersList,
        ["unit/head-cover"] = OwnersList,
        ["unit/opacity"] = OwnersList,
        ["remote/type"] = "the remote in hand, when it is paired",
        ["covering-kind/deduction-inside"] = SecondReader,
        ["covering-kind/end-allowance"] = SecondReader,
        ["covering-kind/middle-screw"] = SecondReader,
        ["covering-kind/pair-hold"] = SecondReader,
        ["covering-kind/preset-hold"] = SecondReader,
        ["covering-kind/round-to"] = SecondReader,
        ["covering-kind/setback"] = "nothing where it is an eighth or less; else the setback as it is measured when the unit hangs",
    };
}
