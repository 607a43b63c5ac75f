using TrimOut.Core.Facts;
using TrimOut.Core.History;
using TrimOut.Core.Phases;

namespace TrimOut.Screens.Shell;

/// <summary>A picture that is named as evidence and is not there: once the wall is closed nobody can take it again.</summary>
internal static class PhotoNote
{
    /// <summary>Which pictures of a change are not there, as a sentence to go on with; nothing where all are.</summary>
    /// <param name="change">A path that was typed, or the mark of a step that a picture is evidence of.</param>
    /// <param name="context">The house as it is now.</param>
    /// <param name="isThere">Whether the file of a path is there.</param>
    public static string Of(Change change, ScreenContext context, Func<string, bool> isThere)
    {
        var typed = change.Edits.OfType<Edit.Put>().Where(p => p.Field == RunFacts.Photo.Name).Select(p => p.Value).OfType<string>();
        var marked = MarksMade.In(change, context.House, context.Steps).Where(m => m.Step.Evidence.Contains(RunFacts.Photo))
            .Select(m => Progress.Holder(m.Of, RunFacts.Photo)?.Get(RunFacts.Photo));
        var lost = typed.Concat(marked.OfType<string>()).Where(p => !AbsenceWords.SayNoMore(p)).SelectMany(p => PhotoPaths.Of(p)).Distinct()
            .Where(p => !isThere(p)).ToList();
        return lost.Count == 0 ? ""
            : $". There is no file {string.Join(", ", lost)} beside the house file yet: put it there while it can still be taken, or put the path right.";
    }
}
