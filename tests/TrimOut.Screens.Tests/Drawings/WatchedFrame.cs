using TrimOut.Screens.Frames;

namespace TrimOut.Screens.Tests.Drawings;

/// <summary>A frame that remembers where text was written over something else that can be seen: a frame, a line, or another text.</summary>
internal sealed class WatchedFrame(int width, int height) : Frame(width, height)
{
    private const string Lines = "─│┌┐└┘-|+";

    public List<string> Faults { get; } = [];

    public override void Set(int x, int y, string text, int columns, Tone tone)
    {
        var before = Row(y)[x].Text;
        if (before != text && (IsText(before) || (IsText(text) && Lines.Contains(before, StringComparison.Ordinal))))
            Faults.Add($"\"{text}\" over \"{before}\" at {x},{y}");
        base.Set(x, y, text, columns, tone);
    }

    /// <summary>Letters, figures and inch marks; but not the letter that stands for an entry on plain terminals.</summary>
    private static bool IsText(string cell) => cell is not ("" or " " or "o") && (char.IsLetterOrDigit(cell[0]) || cell[0] is '"' or '\'' or '/');
}
