using TrimOut.Core.Checks;
using TrimOut.Core.History;
using TrimOut.Papers.BinderSections;
using TrimOut.Papers.Writing;

namespace TrimOut.Papers;

/// <summary>The owner's binder in two parts: how to live with it, for the owner; and what was built and how it was tested, for the trade.</summary>
public static class Binder
{
    /// <summary>The binder among the papers.</summary>
    public static Paper Paper { get; } = new("binder", "Owner's binder", "the owner", "What was built, how it was tested, how to live with it, and who signs.",
        Cover.Write,
        WhenAUnitStops.Section, Cautions.Section, LivingWithIt.Section, AtAGlance.Section, Care.Section, Warranty.Section, OpenItems.Section, SignOff.Section,
        PanelMap.Section, CableSchedule.Section, CableTests.Section, Measures.Section, UnitTable.Section, UnitByUnit.Section, LimitsTable.Section,
        PairingAndPresets.Section, Findings.Section, WhoDidWhat.Section)
    {
        HasContents = true,
        Warns = OpenStops.Draft,
    };

    /// <summary>The binder as Markdown: CommonMark with pipe tables.</summary>
    /// <param name="log">The house with its history.</param>
    /// <param name="date">The day that stands on it.</param>
    /// <param name="report">What the checks say of that house; they are run when it is left out.</param>
    public static string Markdown(HouseLog log, DateOnly date, CheckReport? report = null) => Paper.Write(Data(log, date, report)).Markdown;

    /// <summary>The binder as one HTML page that needs no other file, made for the screen and for printing on Letter or A4.</summary>
    /// <param name="log">The house with its history.</param>
    /// <param name="date">The day that stands on it.</param>
    /// <param name="report">What the checks say of that house; they are run when it is left out.</param>
    public static string Html(HouseLog log, DateOnly date, CheckReport? report = null) => Paper.Write(Data(log, date, report)).ToHtml();

    private static PaperData Data(HouseLog log, DateOnly date, CheckReport? report) => new(log, date, report ?? CheckReport.Of(log.House));
}
