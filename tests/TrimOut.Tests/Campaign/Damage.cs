using System.Text;

namespace TrimOut.Tests.Campaign;

/// <summary>What was done to a house file and its journal.</summary>
/// <param name="Pair">What is left.</param>
/// <param name="What">What was done, in words.</param>
/// <param name="ForeignFile">Whether the file ends as another house's now, which a rescue then takes it for.</param>
/// <param name="Sides">What lies beside the house and in the user's folder, and is damaged: names, and what they hold.</param>
internal sealed record Damaged(Pair Pair, string What, bool ForeignFile, IReadOnlyList<(string Name, byte[] Bytes)> Sides)
{
    /// <summary>Whether it is the house in the first form of the file.</summary>
    public bool IsFirstForm { get; init; }

    /// <summary>The sorts of damage that changed something.</summary>
    public IReadOnlyList<string> Hit { get; init; } = [];
}

/// <summary>Does damage of every sort; the same seed does the same.</summary>
internal static class Damage
{
    private const int LastPage = 8192;
    private const int Tries = 20;

    private static readonly string[] RowFields = ["_id", "house", "n", "after", "seal", "stamp", "v", "json"];
    private static readonly string[] FrameFields = ["id", "number", "after", "seal", "json", "line end"];
    private static readonly string[] HeadFields = ["kind", "form", "id", "house", "start", "after", "check"];
    private static readonly string[] PageFields = ["kind", "json", "hash", "blank", "first note", "second note"];

    private static readonly string[] Ways = ["bit", "zeros", "zeroed sectors", "noise", "cut", "piece gone", "piece doubled", "joined"];

    private const string FirstForm = "first form, ";

    private static readonly string[] Present =
    [
        .. RowFields.Select(f => "row " + f), "row length", "page head", "page slots", "database head",
        .. FrameFields.Select(f => "frame " + f), "frame end mark", .. HeadFields.Select(f => "head " + f), .. PageFields.Select(f => "last page " + f),
        .. new[] { "file", "journal", "both" }.SelectMany(which => Ways.Select(how => $"{which} {how}")),
        "journal tail zeroed", "journal cut at a line", "journal room cut", "journal gone", "file gone from the middle on",
        "older file", "older journal", "foreign file", "foreign journal", "other copy's file", "other copy's journal",
        "joined older file", "joined foreign file", "foreign file before it", "older file before it",
        "joined older journal", "joined foreign journal", "foreign journal before it",
        .. SideFiles.Names.SelectMany(s => new[] { "bit", "zeros", "noise", "cut", "piece doubled" }.Select(how => $"side {s} {how}")),
    ];

    /// <summary>
    /// What can be done to the first form: it kept no note of how far its journal had got and took no room beforehand, so that a journal which ends
    /// earlier, or whose last line is spoilt, looks like a save that never ended. No form of today can tell more of it than that.
    /// </summary>
    private static readonly string[] OfTheFirstForm =
    [
        .. Present.Where(s => s == "journal gone" || !(s.StartsWith("journal ", StringComparison.Ordinal) || s.StartsWith("both ", StringComparison.Ordinal)
            || s.StartsWith("side ", StringComparison.Ordinal) || s.Contains("note", StringComparison.Ordinal) || s.Contains("older", StringComparison.Ordinal)
            || s.Contains("other copy", StringComparison.Ordinal)
            || s is "frame end mark" or "frame seal" or "frame json" or "frame line end" or "head after" or "head check" or "row house"))
            .Select(s => FirstForm + s),
    ];

    /// <summary>Every sort of damage, by name.</summary>
    public static IReadOnlyList<string> Sorts { get; } = [.. Present, .. OfTheFirstForm];

    /// <summary>Every sort of damage to the two files of a house in the present form.</summary>
    public static IReadOnlyList<string> SortsOfFiles { get; } = [.. Present.Where(s => !s.StartsWith("side ", StringComparison.Ordinal))];

    /// <summary>One case: the sort that its number has, and at times another one on top.</summary>
    /// <param name="present">The house in the present form.</param>
    /// <param name="old">The house in the first form.</param>
    /// <param name="number">The number of the case.</param>
    /// <param name="seed">The seed.</param>
    public static Damaged Of(Scene present, Scene old, int number, int seed)
    {
        var random = new Random(unchecked(seed * 1_000_003 + number));
        var sort = Sorts[number % Sorts.Count];
        if (sort.StartsWith(FirstForm, StringComparison.Ordinal))
        {
            var done = Do(old, new Damaged(old.Now, "", false, []) { IsFirstForm = true }, sort[FirstForm.Length..], random);
            return done with { What = FirstForm + done.What, Hit = [.. done.Hit.Select(h => FirstForm + h)] };
        }
        return WithMore(present, Do(present, new Damaged(present.Now, "", false, []), sort, random), number, random);
    }

    /// <summary>One case of damage to the two files of a house in the present form.</summary>
    /// <param name="scene">Where what is exchanged comes from.</param>
    /// <param name="start">The two files as they are.</param>
    /// <param name="number">The number of the case.</param>
    /// <param name="seed">The seed.</param>
    public static Damaged OfFiles(Scene scene, Pair start, int number, int seed)
    {
        var random = new Random(unchecked(seed * 1_000_003 + number));
        return WithMore(scene, Do(scene, new Damaged(start, "", false, []), SortsOfFiles[number % SortsOfFiles.Count], random), number, random);
    }

    private static Damaged WithMore(Scene scene, Damaged first, int number, Random random)
    {
        // What exchanges a file is not done twice: an older file with the journal that belongs to it is a sound house.
        var more = Present.Where(s => !s.Contains("older", StringComparison.Ordinal) && !s.Contains("foreign", StringComparison.Ordinal)
            && !s.Contains("other copy", StringComparison.Ordinal) && s != "journal gone").ToList();
        return number % 3 == 2 ? Do(scene, first, more[random.Next(more.Count)], random) : first;
    }

    /// <summary>Damage of a sort. Zeros over zeros are none: it is tried again, in another place, until something is changed.</summary>
    private static Damaged Do(Scene scene, Damaged before, string sort, Random random)
    {
        var done = Once(scene, before, sort, random);
        for (var again = 0; again < Tries && done.Hit.Count == before.Hit.Count; again++)
            done = Once(scene, before, sort, random);
        return done;
    }

    private static Damaged Once(Scene scene, Damaged before, string sort, Random random)
    {
        var (file, journal) = before.Pair;
        var foreign = before.ForeignFile;
        var sides = before.Sides;
        var words = sort.Split(' ', 2);
        switch (words[0])
        {
            case "side":
                var of = words[1].Split(' ', 2);
                var whole = SideFiles.Of(of[0], scene);
                sides = [.. sides, (of[0], Spoil(whole, whole.Length, of[1], random))];
                break;
            case "row":
                file = Row(file, words[1], random);
                break;
            case "frame":
                journal = Frame(journal, words[1], random);
                break;
            case "head":
                journal = Head(journal, words[1], random);
                break;
            case "last":
                file = Page(file, words[1]["page ".Length..], random);
                break;
            case "page":
                file = Flip(file, random.Next(Math.Max(1, file.Length / 8192)) * 8192 + (words[1] == "head" ? random.Next(32)
                    : 8191 - random.Next(64)), random);
                break;
            case "database":
                file = Flip(file, random.Next(8192), random);
                break;
            default:
                (file, journal, foreign) = Whole(scene, file, journal, foreign, sort, random);
                break;
        }
        var changed = sides != before.Sides || !file.AsSpan().SequenceEqual(before.Pair.File)
            || !(journal ?? []).AsSpan().SequenceEqual(before.Pair.Journal ?? []);
        return before with
        {
            Pair = new Pair(file, journal),
            What = before.What.Length == 0 ? sort : $"{before.What}, {sort}",
            ForeignFile = foreign,
            Sides = sides,
            Hit = changed ? [.. before.Hit, sort] : before.Hit,
        };
    }

    private static (byte[] File, byte[]? Journal, bool Foreign) Whole(Scene scene, byte[] file, byte[]? journal, bool foreign, string sort, Random random)
    {
        var older = scene.Older[random.Next(scene.Older.Count)];
        var other = scene.Foreign[random.Next(scene.Foreign.Count)];
        var lines = journal is null ? 0 : journal.AsSpan().TrimEnd((byte)0).Length;
        return sort switch
        {
            "journal tail zeroed" => (file, journal is null ? null : Zeroed(journal, random.Next(lines), journal.Length), foreign),
            "journal cut at a line" => (file, journal is null ? null : journal[..LineEnd(journal, random)], foreign),
            "journal room cut" => (file, journal is null ? null : journal[..Math.Min(journal.Length, lines + random.Next(3))], foreign),
            "journal gone" => (file, null, foreign),
            "file gone from the middle on" => (file[..(file.Length / 2 / 8192 * 8192)], journal, foreign),
            "older file" => (older.File, journal, foreign),
            "older journal" => (file, scene.Older[^(1 + random.Next(Math.Min(12, scene.Older.Count)))].Journal, foreign),
            "foreign file" => (other.File, journal, true),
            "foreign journal" => (file, other.Journal, foreign),
            "other copy's file" => (scene.OtherCopy.File, journal, foreign),
            "other copy's journal" => (file, scene.OtherCopy.Journal, foreign),
            "joined older file" => ([.. file, .. older.File], journal, foreign),
            "joined foreign file" => ([.. file, .. other.File], journal, true),
            "foreign file before it" => ([.. other.File, .. file], journal, foreign),
            "older file before it" => ([.. older.File, .. file], journal, foreign),
            "joined older journal" => (file, [.. journal ?? [], .. older.Journal ?? []], foreign),
            "joined foreign journal" => (file, [.. journal ?? [], .. other.Journal ?? []], foreign),
            "foreign journal before it" => (file, [.. other.Journal ?? [], .. journal ?? []], foreign),
            _ => (sort.StartsWith("journal", StringComparison.Ordinal) ? file : Spoil(file, file.Length, How(sort), random),
                sort.StartsWith("file", StringComparison.Ordinal) || journal is null ? journal : Spoil(journal, lines, How(sort), random), foreign),
        };
    }

    private static string How(string sort) => sort[(sort.IndexOf(' ', StringComparison.Ordinal) + 1)..];

    private static byte[] Spoil(byte[] bytes, int within, string how, Random random)
    {
        if (bytes.Length == 0)
            return bytes;
        var at = random.Next(Math.Max(1, Math.Min(within, bytes.Length)));
        var length = Math.Min(random.Next(1, 5000), bytes.Length - at);
        var spoilt = bytes.ToArray();
        switch (how)
        {
            case "bit":
                return Flip(bytes, at, random);
            case "zeros":
                return Zeroed(bytes, at, at + length);
            case "zeroed sectors":
                return Zeroed(bytes, at / 512 * 512, Math.Min(bytes.Length, at / 512 * 512 + 512 * random.Next(1, 9)));
            case "noise":
                random.NextBytes(spoilt.AsSpan(at, length));
                return spoilt;
            case "cut":
                return bytes[..at];
            case "piece gone":
                return [.. bytes[..at], .. bytes[(at + length)..]];
            case "piece doubled":
                return [.. bytes[..(at + length)], .. bytes[at..]];
            default:
                return [.. bytes, .. bytes[at..]];
        }
    }

    private static byte[] Row(byte[] file, string field, Random random)
    {
        var marks = field == "length" ? Places(file, "\u0002_id\0"u8) : Places(file, [field is "n" or "stamp" ? (byte)0x12 : field == "v" ? (byte)0x10
            : (byte)2, .. Encoding.UTF8.GetBytes(field), 0]);
        if (marks.Count == 0)
            return file;
        var mark = marks[random.Next(marks.Count)];
        return field == "length" ? Flip(file, Math.Max(0, mark - 4 + random.Next(4)), random)
            : Flip(file, mark + field.Length + 2 + random.Next(field switch
            {
                "n" or "stamp" => 8,
                "v" => 4,
                // Of a text its length and its first letters: those of a long one may go on in another page.
                _ => 4 + 6,
            }), random);
    }

    private static byte[]? Frame(byte[]? journal, string field, Random random)
    {
        if (journal is null)
            return null;
        var ends = Places(journal, "\n"u8);
        if (ends.Count < 3)
            return journal;
        if (field == "end mark")
            return Flip(journal, ends[^1] - random.Next(4), random);
        var line = random.Next(ends.Count - 2);
        if (field == "line end")
            return Flip(journal, ends[line + 1], random);
        return Field(journal, ends[line] + 1, ends[line + 1], Array.IndexOf(FrameFields, field), FrameFields.Length - 1, random);
    }

    private static byte[]? Head(byte[]? journal, string field, Random random) =>
        journal is null || Places(journal, "\n"u8) is not [var end, ..] ? journal : Field(journal, 0, end, Array.IndexOf(HeadFields, field),
            HeadFields.Length, random);

    private static byte[] Field(byte[] bytes, int from, int to, int field, int fields, Random random)
    {
        var starts = new List<int> { from };
        for (var at = from; at < to && starts.Count < fields; at++)
        {
            if (bytes[at] == ' ')
                starts.Add(at + 1);
        }
        if (field >= starts.Count)
            return bytes;
        var end = field + 1 < starts.Count ? starts[field + 1] - 1 : to;
        return Flip(bytes, starts[field] + random.Next(Math.Max(1, end - starts[field])), random);
    }

    private static byte[] Page(byte[] file, string field, Random random)
    {
        if (file.Length < LastPage)
            return file;
        var from = file.Length - LastPage;
        var ends = Places(file, "\n"u8).Where(e => e >= from).Take(3).ToList();
        if (ends.Count < 3)
            return file;
        return Flip(file, field switch
        {
            "kind" => from + random.Next(13),
            "json" => ends[0] + 1 + random.Next(ends[1] - ends[0] - 1),
            "hash" => ends[1] + 1 + random.Next(64),
            "blank" => ends[2] + 1 + random.Next(3000),
            "first note" => file.Length - 1024 + random.Next(512),
            _ => file.Length - 512 + random.Next(512),
        }, random);
    }

    private static int LineEnd(byte[] journal, Random random) => Places(journal, "\n"u8) is { Count: > 2 } ends
        ? ends[random.Next(1, ends.Count - 1)] + 1 : journal.Length;

    private static byte[] Flip(byte[] bytes, int at, Random random)
    {
        var flipped = bytes.ToArray();
        if (at < flipped.Length)
            flipped[at] ^= (byte)(1 << random.Next(8));
        return flipped;
    }

    private static byte[] Zeroed(byte[] bytes, int from, int to)
    {
        var zeroed = bytes.ToArray();
        zeroed.AsSpan(from, Math.Max(0, to - from)).Clear();
        return zeroed;
    }

    private static List<int> Places(byte[] bytes, ReadOnlySpan<byte> of)
    {
        var found = new List<int>();
        for (var at = 0; bytes.AsSpan(at).IndexOf(of) is >= 0 and var next; at += next + 1)
            found.Add(at + next);
        return found;
    }
}
