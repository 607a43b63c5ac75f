using TrimOut.Core.Houses;

namespace TrimOut.Core.Facts;

/// <summary>What is known about a waiver; it belongs to the item that the finding is about.</summary>
public static class WaiverFacts
{
    private static readonly Declare Of = new(ItemKind.Waiver);

    public static readonly Fact<string> Check = Of.Text("check", "Check", "The id of the check.");
    public static readonly Fact<string> Figures = Of.Text("figures", "Figures",
        "What the finding said when it was waived, in the words of that day.", null, 1000);

    public static readonly Fact<string> Arguments = Of.Text("arguments", "Arguments",
        "The figures that it was waived with, exact and without words; others reopen it.", null, 4000);
    public static readonly Fact<string> Reason = Of.Text("reason", "Reason", "Why it may stay as it is.", null, Declare.Note);
    public static readonly Fact<string> Initials = Of.Text("initials", "Initials", "Who says so.", null, 6);

    internal static readonly Fact[] All = [Check, Figures, Arguments, Reason, Initials];
}
