using TrimOut.Core.History;
using TrimOut.HouseFile.Durable;
using TrimOut.HouseFile.Files;

namespace TrimOut.HouseFile.Rescues;

/// <summary>Everything in the bare bytes of a house file and its journal that could be of use, believed only as far as its own seal goes.</summary>
/// <param name="Names">The files.</param>
/// <param name="Last">The house file's last page, where it stands at the end as it should.</param>
/// <param name="HasFile">Whether there is a house file.</param>
/// <param name="Trailers">Every last page that lies in the file, in their order: several when files were put one behind the other.</param>
/// <param name="Heads">Every head of a journal that lies in the journal.</param>
/// <param name="Rows">What looks like a row, and the house that it says it is of.</param>
/// <param name="Lines">What looks like a line of a journal, and the journal that it says it is of.</param>
internal sealed record Found(
    HouseFileNames Names, Trailer? Last, bool HasFile, IReadOnlyList<Trailer> Trailers, IReadOnlyList<JournalHead> Heads,
    IReadOnlyList<(Entry Entry, string House)> Rows, IReadOnlyList<(Entry Entry, string Journal)> Lines)
{
    private static readonly byte[] TrailerStart = "trimout-house\n"u8.ToArray();

    private const int Piece = 1 << 20;

    private Func<string, JournalContents>? JournalOf { get; init; }

    /// <summary>Whether the journal is a link that leads nowhere.</summary>
    public bool JournalLeadsNowhere { get; private init; }

    /// <summary>Whether there is a journal.</summary>
    public bool HasJournal => JournalOf is not null;

    /// <summary>
    /// The house that the files are of: what the last page says, else the rows, else the journal, which may have come beside the file from elsewhere;
    /// null when none does.
    /// </summary>
    public string? House => Last?.House ?? HouseOfBoth ?? Trailers.LastOrDefault()?.House
        ?? Rows.Select(r => r.House).Where(h => h.Length > 0).GroupBy(h => h).OrderByDescending(g => g.Count()).FirstOrDefault()?.Key
        ?? Heads.Select(h => h.House).FirstOrDefault(h => h.Length > 0);

    /// <summary>The one house that the rows of the file and its journal have in common: which it is of where its last page can't say so.</summary>
    private string? HouseOfBoth =>
        Rows.Select(r => r.House).Intersect(Heads.Select(h => h.House)).Where(h => h.Length > 0).Take(2).ToList() is [var one] ? one : null;

    /// <summary>Whether there is something of several houses in the file, and no last page that says of which it is.</summary>
    public bool IsOfNobodyKnowsWhich => Last is null && Rows.Select(r => r.House).Where(h => h.Length > 0).Distinct().Skip(1).Any();

    /// <summary>Whether nothing of another file or journal lies among these.</summary>
    public bool IsOfOnePiece => Trailers.Count <= 1 && Heads.All(h => h.Id == Last?.Journal);

    /// <summary>Reads a journal alone, whatever it is called.</summary>
    public static Found InJournal(Surroundings here, string journal) =>
        In(here, new HouseFileNames(journal + HouseFileNames.Ending) { JournalAt = journal });

    /// <summary>Reads the files.</summary>
    public static Found In(Surroundings here, HouseFileNames names)
    {
        if (!here.Files.Exists(names.Main) && !here.Files.Exists(names.Journal))
            throw Faults.NotThere(here, names);
        using var file = Opened(here, names.Main);
        using var journal = Opened(here, names.Journal);
        var trailers = file is null ? [] : TrailersIn(file);
        var read = new Dictionary<string, JournalContents>(StringComparer.Ordinal);
        return new Found(names, file is null ? null : Trailer.Read(here.Files.ReadEnd(names.Main, Trailer.Size)), file is not null,
            [.. trailers.Select(t => t.Trailer)], journal is null ? [] : Journal.Heads(journal),
            file is null ? [] : RowScan.Read(file, [.. trailers.Select(t => t.End)]), journal is null ? [] : Journal.Lines(journal))
        {
            JournalLeadsNowhere = journal is null && here.Files.Exists(names.Journal),
            JournalOf = journal is null ? null : house => read.TryGetValue(house, out var known) ? known : read[house] = Read(house),
        };

        JournalContents Read(string house)
        {
            using var again = here.Files.OpenToRead(names.Journal);
            return Journal.Read(again, house, here.Seal);
        }
    }

    /// <summary>A file, open; null where there is none, and for a link that leads nowhere.</summary>
    private static IReadFile? Opened(Surroundings here, string path)
    {
        try
        {
            return here.Files.Exists(path) ? here.Files.OpenToRead(path) : null;
        }
        catch (Exception failed) when (failed is FileNotFoundException or DirectoryNotFoundException)
        {
            return null;
        }
    }

    /// <summary>What the journal holds of a house, up to the first break; null when there is no journal.</summary>
    public JournalContents? JournalAs(string house) => JournalOf?.Invoke(house);

    /// <summary>The entries whose seals fit in a house, and which no other copy of it made after this one.</summary>
    public IEnumerable<Entry> EntriesOf(string house, SealMaker seal)
    {
        var own = TrailerOf(house);
        return Rows.Where(r => r.House.Length == 0 || r.House == house).Select(r => r.Entry)
            .Concat(Lines.Where(l => IsOwn(own, l)).Select(l => l.Entry)).Where(e => Seal.Fits(e, house, seal));
    }

    /// <summary>Sound lines of a journal of another copy of the house: they go on from the same changes, and are not ours.</summary>
    public IEnumerable<Entry> LinesOfOtherCopies(string house, SealMaker seal) =>
        Lines.Where(l => !IsOwn(TrailerOf(house), l) && Seal.Fits(l.Entry, house, seal)).Select(l => l.Entry);

    /// <summary>The last page of a house in the file; null when there is none.</summary>
    public Trailer? TrailerOf(string house) => Last is { } last && last.House == house ? last : Trailers.LastOrDefault(t => t.House == house);

    /// <summary>Places in the chain that are known for certain, in a house.</summary>
    public IReadOnlyList<(long Number, string Seal)> AnchorsOf(string house)
    {
        var own = TrailerOf(house);
        var anchors = new List<(long, string)>();
        if (own is not null)
            anchors.Add((own.Count, own.Seal));
        // A head of the first form is under no seal. Beside its file it tells nothing that the last page does not.
        foreach (var head in Heads.Where(h => own is null ? h.House == house : h.Id == own.Journal && h.Form > 1))
            anchors.Add((head.Start, head.After));
        // What is whole in the file's own journal comes before what another copy wrote after the same change.
        if (JournalAs(house) is { Head: { } begun, Entries: [.., var end] } && GoesOnFrom(own, begun))
            anchors.Add((end.Number, end.Seal));
        return anchors;
    }

    private static bool GoesOnFrom(Trailer? own, JournalHead head) =>
        own is not null && head.Id == own.Journal && (head.Form > 1 || (head.Start == own.Count && head.After == own.Seal));

    /// <summary>Whether a line is of the journal that goes on from the file, of what is in the file anyway, or of this copy's own device.</summary>
    private static bool IsOwn(Trailer? own, (Entry Entry, string Journal) line) => own is null || line.Journal == own.Journal || line.Entry.Number <= own.Count
        || (ChangeJson.Read(line.Entry.Json) is { Ok: true } change && change.Value.Id.Device == own.Device);

    /// <summary>Every last page in a file, and where the house file that it ends ends.</summary>
    private static List<(Trailer Trailer, long End)> TrailersIn(IReadFile file)
    {
        var found = new List<(Trailer, long)>();
        var (piece, page) = (new byte[Piece], new byte[Trailer.Size]);
        for (var from = 0L; ;)
        {
            var read = piece.AsSpan(0, file.Read(from, piece));
            var next = read.IndexOf(TrailerStart);
            if (next < 0)
            {
                if (read.Length < piece.Length)
                    return found;
                from += read.Length - TrailerStart.Length + 1;
                continue;
            }
            from += next;
            if (file.Read(from, page) == page.Length && Trailer.Read(page) is { } trailer)
                found.Add((trailer, from + Trailer.Size));
            from += TrailerStart.Length;
        }
    }
}
