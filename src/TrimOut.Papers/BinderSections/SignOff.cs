using TrimOut.Core.Facts;
using TrimOut.Core.Houses;
using TrimOut.Papers.Writing;
using static TrimOut.Papers.Writing.MarkdownWriter;

namespace TrimOut.Papers.BinderSections;

/// <summary>Demonstration, binder, open items, and the signatures.</summary>
internal static class SignOff
{
    public static Section Section { get; } = new("Sign-off", Write);

    private static void Write(MarkdownWriter to, PaperData data)
    {
        var job = new JobItself(data.House);
        to.Facts("What", "Entry",
            ("Demonstrated on", job.Show(HouseFacts.DemonstratedOn).OrNotYet()),
            ("Demonstrated to", job.Show(HouseFacts.DemonstratedTo).OrNotYet()),
            ("Binder given on", job.Show(HouseFacts.BinderGivenOn).OrNotYet()),
            ("Open items agreed", job.Show(HouseFacts.OpenItemsAgreed).OrNotYet()),
            ("Accepted by", job.Show(HouseFacts.AcceptedBy).OrNotYet()),
            ("Accepted on", job.Show(HouseFacts.AcceptedOn).OrNotYet()));

        to.Heading(3, "Mains connection");
        to.Table(["Panel", "Connected by", "Licence", "On", "Signature"], data.House.Panels.Select(p => Row(
            p.Name, p.Show(PanelFacts.ConnectedBy).OrNotYet(), p.Show(PanelFacts.Licence).OrDash(), p.Show(PanelFacts.ConnectedOn).OrNotYet(), Inline.Blank)));

        to.Heading(3, "Handover");
        to.Say("Every unit was shown open, closed and at its preset from each of its remotes; the cautions were read together; the open items above are agreed.");
        to.Table(["For", "Name", "Signature", "Date"],
        [
            Row("Owner", Inline.Blank, Inline.Blank, Inline.Blank),
            Row("Crew", Inline.Blank, Inline.Blank, Inline.Blank),
        ]);
    }
}
