using TrimOut.Core.Houses;

namespace TrimOut.Core.Facts;

/// <summary>What is known about something that was done in service; it belongs to the unit, panel, hub, remote or house that it was done to.</summary>
public static class ServiceFacts
{
    private static readonly Declare Of = new(ItemKind.Service);

    public static readonly Fact<ServiceKind> Kind = Of.Choice<ServiceKind>("kind", "Service",
        "What is another one now, or that it was repaired or looked at, or that it failed and waits; what is asked again was settled when it was recorded.");
    public static readonly Fact<DateOnly> On = Of.Date("on", "Done on", "The day on which it was done.");
    public static readonly Fact<string> By = Of.Text("by", "Done by", "Who did it.");
    public static readonly Fact<string> Cause = Of.Text("cause", "Cause", "What was wrong, or why it was done.", null, Declare.Note);
    public static readonly Fact<string> OldSerial = Of.Text("old-serial", "Serial taken off", "The serial number of what was taken off.", null, 60);
    public static readonly Fact<string> NewSerial = Of.Text("new-serial", "Serial put in",
        "The serial number of what was put in its place, as it was read on that day; of the one that hangs there now the unit says it.", null, 60);
    public static readonly Fact<string> Claim = Of.Evidence("claim", "Warranty claim", "The number under which the maker keeps the claim.", null, 60);
    public static readonly Fact<ClaimOutcome> Outcome = Of.Choice<ClaimOutcome>("outcome", "Claim came to",
        "What became of the claim; blank while it is open.");

    internal static readonly Fact[] All = [Kind, On, By, Cause, OldSerial, NewSerial, Claim, Outcome];
}
