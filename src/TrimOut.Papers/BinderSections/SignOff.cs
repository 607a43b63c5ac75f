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

    private static void Write(MarkdownWriter to, PaperData data)
    {
        var job = new JobItself(data.House);
        to.Facts("What", "Entry",
            ("Demonstrated on", job.EntryOrNotYet(HouseFacts.DemonstratedOn)),
            ("Demonstrated to", job.EntryOrNotYet(HouseFacts.DemonstratedTo)),
            ("In a power cut", job.EntryOrNotYet(HouseFacts.PowerCutTold)),
            ("Binder given on", job.EntryOrNotYet(HouseFacts.BinderGivenOn)),
            ("Open items agreed", job.EntryOrNotYet(HouseFacts.OpenItemsAgreed)),
            ("Accepted by", job.EntryOrNotYet(HouseFacts.AcceptedBy)),
            ("Accepted on", job.EntryOrNotYet(HouseFacts.AcceptedOn)));

        to.Heading(3, "Mains connection");
        to.Table(["Panel", "Connected by", "Licence", "On", "Signature"], data.House.Panels.Select(p => Row(
            p.Name, p.EntryOrNotYet(PanelFacts.ConnectedBy), p.Entry(PanelFacts.Licence), p.EntryOrNotYet(PanelFacts.ConnectedOn), Blank)));

        to.Heading(3, "Handover");
        to.Say("Every unit was shown open, closed and at its preset from each of its remotes; the cautions were read together; " +
            "the open items above are agreed.");
        to.Table(["For", "Name", "Signature", "Date"],
        [
            Row(Ours("Owner"), Blank, Blank, Blank),
            Row(Ours("Crew"), Blank, Blank, Blank),
        ]);
    }
}
