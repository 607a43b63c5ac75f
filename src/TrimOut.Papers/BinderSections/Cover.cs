using TrimOut.Core.Facts;
using TrimOut.Core.Houses;
using TrimOut.Papers.Writing;

namespace TrimOut.Papers.BinderSections;

/// <summary>Whose house it is, who did the work, and what the binder holds.</summary>
internal static class Cover
{
    public static void Write(MarkdownWriter to, PaperData data, IEnumerable<Section> sections)
    {
        var job = new JobItself(data.House);
        to.Facts("About", "Entry",
            ("House", data.House.Name),
            ("Client", job.Show(HouseFacts.Client).OrDash()),
            ("Address", job.Show(HouseFacts.Address).OrDash()),
            ("Site contact", job.Show(HouseFacts.SiteContact).OrDash()),
            ("Crew", job.Show(HouseFacts.Crew).OrDash()),
            ("Code in force", job.Show(HouseFacts.CodeInForce).OrDash()),
            ("Framing walk", job.Show(HouseFacts.FramingOn).OrNotYet()),
            ("Drywall started", job.Show(HouseFacts.DrywallOn).OrNotYet()),
            ("Painted", job.Show(HouseFacts.PaintedOn).OrNotYet()),
            ("Handover", job.Show(HouseFacts.HandoverOn).OrNotYet()),
            ("This binder written", data.Date.OnPaper()));
        to.Say("What stands in this binder:");
        to.List(sections.Select(s => Inline.LinkTo(s.Title)));
        to.Say("A dash means that nothing was noted. \"Not yet\" means that it is still to come. Left and right are as seen from inside the room, facing the window.");
    }
}
