using System.Globalization;

namespace TrimOut.Papers.Writing;

/// <summary>Says at the head of a paper that saves of the house are in doubt and not on it.</summary>
internal static class Doubt
{
    /// <summary>Says it, where something is in doubt.</summary>
    public static void Say(MarkdownWriter to, PaperData data)
    {
        if (data.InDoubt is not { } saves)
            return;
        var number = saves.ToString(CultureInfo.InvariantCulture);
        to.Say(Inline.Strong("This paper lacks something.") + (saves switch
        {
            0 => Inline.Ours("The end of the house's history is damaged: nobody knows how many saves are missing here."),
            1 => Inline.Ours("The end of the house's history is damaged: at least 1 save is missing here."),
            _ => Inline.Ours($"The end of the house's history is damaged: at least {number} saves are missing here."),
        }) + Inline.Ours("Bring them back before anybody builds by it: trimout rescue."));
    }
}
