using TrimOut.Core.Checks;
using TrimOut.Core.Houses;
using TrimOut.Papers.BinderSections;
using TrimOut.Papers.Writing;

namespace TrimOut.Papers;

/// <summary>The owner's binder: what was built, how it was tested, how to live with it, and who signs.</summary>
public static class Binder
{
    private static readonly Section[] Sections =
    [
        Cautions.Section, AtAGlance.Section, PanelMap.Section, CableSchedule.Section, UnitTable.Section, PairingAndPresets.Section,
        LimitsTable.Section, LivingWithIt.Section, WhenAUnitStops.Section, Care.Section, OpenItems.Section, WhoDidWhat.Section, SignOff.Section,
    ];

    /// <summary>The binder as Markdown: CommonMark with pipe tables.</summary>
    /// <param name="house">The house.</param>
    /// <param name="date">The day that stands on it.</param>
    /// <param name="report">What the checks say of that house; they are run when it is left out.</param>
    public static string Markdown(House house, DateOnly date, CheckReport? report = null)
    {
        var data = new PaperData(house, date, report ?? CheckReport.Of(house));
        var to = new MarkdownWriter().Heading(1, Title(house));
        Cover.Write(to, data, Sections);
        foreach (var section in Sections)
        {
            to.Heading(2, section.Title);
            section.Write(to, data);
        }
        return to.ToString();
    }

    /// <summary>The binder as one HTML page that needs no other file, made for the screen and for printing on Letter or A4.</summary>
    /// <param name="house">The house.</param>
    /// <param name="date">The day that stands on it.</param>
    /// <param name="report">What the checks say of that house; they are run when it is left out.</param>
    public static string Html(House house, DateOnly date, CheckReport? report = null) =>
        HtmlPage.Of(Title(house), Markdown(house, date, report));

    private static string Title(House house) => $"Window coverings: {house.Name}";
}
