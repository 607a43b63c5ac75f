using TrimOut.Core.Facts;
using TrimOut.Core.Houses;
using TrimOut.Papers.Writing;
using static TrimOut.Papers.Writing.Inline;
using static TrimOut.Papers.Writing.MarkdownWriter;

namespace TrimOut.Papers.BinderSections;

/// <summary>Demonstration, binder, open items, and the signatures.</summary>
internal static class SignOff
{
    public static Section Section { get; } = new("sign_off", "Sign-off", Write);

    private static readonly Fact[] Noted =
        [HouseFacts.DemonstratedOn, HouseFacts.DemonstratedTo, HouseFacts.BinderGivenOn, HouseFacts.AcceptedBy, HouseFacts.AcceptedOn];

    private static void Write(MarkdownWriter to, PaperData data)
    {
        var job = new JobItself(data.House);
        if (Array.TrueForAll(Noted, f => job.Item.Latest(f)?.Stored is null))
        {
            to.Say("No demonstration and no acceptance is noted yet.");
        }
        else
        {
            to.Facts("What", "Entry",
                ("Demonstrated on", job.DayOrNotYet(HouseFacts.DemonstratedOn, data.Date)),
                ("Demonstrated to", job.EntryOrNotYet(HouseFacts.DemonstratedTo)),
                ("Binder given on", job.DayOrNotYet(HouseFacts.BinderGivenOn, data.Date)),
                ("Accepted by", job.EntryOrNotYet(HouseFacts.AcceptedBy)),
                ("Accepted on", job.DayOrNotYet(HouseFacts.AcceptedOn, data.Date)));
        }
        if (!data.House.Panels.IsEmpty)
            to.Heading(3, "Mains connection").Filled(["Panel", "Connected by", "License", "On", "Signature"], data.House.Panels.Select(p => Row(
            p.Name, p.EntryOrNotYet(PanelFacts.ConnectedBy), p.Entry(PanelFacts.Licence), p.DayOrNotYet(PanelFacts.ConnectedOn, data.Date), Blank)));

        to.Heading(3, "Handover");
        to.Say(Ours(data.House.Remotes.Any(r => r.Presets.Any(p => p.Positions.Any()))
            ? "Every unit was shown open, closed and at its preset from each of its remotes; the cautions were read together; the open items above are agreed."
            : "Every unit was shown open and closed from each of its remotes; the cautions were read together; the open items above are agreed."));
        to.Table(["For", "Name", "Date", "Signature"],
        [
            Row(Ours("Owner"), job.EntryOrBlank(HouseFacts.AcceptedBy), Blank, Blank),
            Row(Ours("Crew"), Blank, Blank, Blank),
        ]);
    }
}
