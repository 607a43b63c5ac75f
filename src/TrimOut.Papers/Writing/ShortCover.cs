using TrimOut.Core.Facts;
using TrimOut.Core.Houses;

namespace TrimOut.Papers.Writing;

/// <summary>The head of a working paper: which house, who works there and is called, who comes when, when it was written.</summary>
internal static class ShortCover
{
    public static void Write(MarkdownWriter to, PaperData data) => Write(to, data, People.WriteVisits);

    /// <summary>The head of a paper that is itself the list of visits.</summary>
    public static void WithoutVisits(MarkdownWriter to, PaperData data) => Write(to, data, People.AskIfDone);

    private static void Write(MarkdownWriter to, PaperData data, Action<MarkdownWriter, PaperData> visits)
    {
        var job = new JobItself(data.House);
        to.Facts("About", "Entry",
            ("House", Inline.NameOf(data.House, data.House.Job)),
            ("Address", job.Entry(HouseFacts.Address)),
            ("Site contact", job.Entry(HouseFacts.SiteContact)),
            ("Crew", job.Entry(HouseFacts.Crew)),
            ("Code in force", job.Entry(HouseFacts.CodeInForce)),
            ("Written on", data.Date.OnPaper()));
        People.WriteContacts(to, data.House.Contacts);
        visits(to, data);
        if (!data.Report.Missing.IsEmpty)
            to.Say(Inline.Ours(
                $"Checks that could not be made, because details are missing: {data.Report.Missing.Length}. What they would find stands on no paper."));
        if (SheetMarks.Passing(data) is { } passing)
            to.Say(passing);
    }
}
