using System.Globalization;
using System.Text;
using TrimOut.Core;
using TrimOut.Core.History;

namespace TrimOut.HouseFile.Texts;

/// <summary>A whole history as JSON Lines: one change a line, lossless both ways.</summary>
public static class HistoryText
{
    /// <summary>The name of the file that holds a sample house's history.</summary>
    public const string FileName = "history.jsonl";

    /// <summary>The text, in the order in which changes are replayed.</summary>
    public static string Write(HouseLog log)
    {
        var text = new StringBuilder();
        foreach (var change in log.Changes)
            text.Append(ChangeJson.Write(change)).Append('\n');
        return text.ToString();
    }

    /// <summary>Reads the text.</summary>
    /// <returns>The history, or the first line that is wrong and why.</returns>
    public static Result<HouseLog> Read(string text)
    {
        var changes = new List<Change>();
        var number = 0;
        foreach (var line in text.TrimStart('\ufeff').Split('\n'))
        {
            number++;
            if (string.IsNullOrWhiteSpace(line))
                continue;
            var change = ChangeJson.Read(line.TrimEnd('\r'));
            if (!change.Ok)
                return new Refusal(string.Create(CultureInfo.InvariantCulture, $"Line {number}: {change.Reason}"));
            changes.Add(change.Value);
        }
        return changes.Count == 0 ? new Refusal("There is no change in it.") : HouseLog.Of(changes);
    }
}
