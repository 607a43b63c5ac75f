using System.Globalization;
using System.Text;
using TrimOut.Core;
using TrimOut.Core.History;
using TrimOut.HouseFile.Durable;

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
    public static Result<HouseLog> Read(string text) => Read(new StringReader(text));

    /// <summary>Reads the text line by line, so that what never ends or is no history is refused at its first line.</summary>
    /// <returns>The history, or the first line that is wrong and why.</returns>
    /// <param name="text">The text.</param>
    /// <param name="says">Told at times how many changes were read.</param>
    /// <exception cref="IOException">It can't be read.</exception>
    public static Result<HouseLog> Read(TextReader text, Action<int>? says = null)
    {
        long characters = 0;
        var changes = new List<Change>();
        var lines = new ShortLines(text, LongestLine);
        while (lines.Next() is { } line)
        {
            if (lines.Number == 1)
                line = line.TrimStart('\ufeff');
            characters += line.Length + 1;
            if (TextBytes.IsBroken(line))
                return At(lines, TextBytes.NotUtf8);
            if (lines.TooLong)
                return At(lines, string.Create(CultureInfo.InvariantCulture, $"it is longer than {LongestLine} characters, and no change."));
            if (characters > MostCharacters)
                return At(lines, string.Create(CultureInfo.InvariantCulture,
                    $"up to here it has more than {MostCharacters} characters: that is no house's history."));
            if (string.IsNullOrWhiteSpace(line))
                continue;
            var change = ChangeJson.Read(line);
            if (!change.Ok)
                return At(lines, change.Reason!);
            changes.Add(change.Value);
            if (changes.Count > MostChanges)
                return At(lines, string.Create(CultureInfo.InvariantCulture, $"it is one more than {MostChanges} changes. ") + WhyNotMore);
            if (changes.Count % SayEvery == 0)
                says?.Invoke(changes.Count);
        }
        if (changes.Count == 0)
            return new Refusal("There is no change in it.");
        return HouseLog.Of(changes).Then<HouseLog>(log => (log.Jump ?? log.Mixed) is { } why ? new Refusal(why) : log);
    }

    /// <summary>
    /// The most changes of a history that is read as text: half as many again as the largest house had that it was tried with, and no more than a small
    /// computer can hold (docs/house-file.md has the figures).
    /// </summary>
    public const int MostChanges = 300_000;

    /// <summary>The most characters of a history that is read as text.</summary>
    public const int MostCharacters = 128 << 20;

    private const string WhyNotMore = "That many are not taken in from a text, because all of them are held in memory until they are a house. " +
        "To copy a house file: trimout backup HOUSE --to COPY.";

    private const int LongestLine = Entry.LongestJson;
    private const int SayEvery = 50_000;

    private static Refusal At(ShortLines lines, string reason) => new(string.Create(CultureInfo.InvariantCulture, $"Line {lines.Number}: {reason}"));
}
