using TrimOut.Core.History;
using TrimOut.HouseFile.Durable;

namespace TrimOut.HouseFile.Rescues;

/// <summary>Everything in the bare bytes of a house file and its journal that could be of use, believed only as far as its own seal goes.</summary>
/// <param name="Names">The files.</param>
/// <param name="File">The house file's bytes; null when it is missing.</param>
/// <param name="Journal">The journal's bytes; null when there is none.</param>
/// <param name="Trailers">Every last page that lies in the file, in their order: several when files were put one behind the other.</param>
/// <param name="Heads">Every head of a journal that lies in the journal.</param>
/// <param name="Rows">What looks like a row, and the house that it says it is of.</param>
/// <param name="Lines">What looks like a line of a journal, and the journal that it says it is of.</param>
internal sealed record Found(
    HouseFileNames Names, byte[]? File, byte[]? Journal, IReadOnlyList<Trailer> Trailers, IReadOnlyList<JournalHead> Heads,
    IReadOnlyList<(Entry Entry, string House)> Rows, IReadOnlyList<(Entry Entry, string Journal)> Lines)
{
    private static readonly byte[] TrailerStart = "trimout-house\n"u8.ToArray();

    /// <summary>The last page, where it stands at the end as it should.</summary>
    public Trailer? Last => File is null ? null : Trailer.Read(File);

    /// <summary>The house that the files are of: what the last page says, else the journal, else the rows; null when none does.</summary>
    public string? House => (Last ?? Trailers.LastOrDefault())?.House
        ?? Heads.Select(h => h.House).FirstOrDefault(h => h.Length > 0)
        ?? Rows.Select(r => r.House).Where(h => h.Length > 0).GroupBy(h => h).OrderByDescending(g => g.Count()).FirstOrDefault()?.Key;

    /// <summary>Whether nothing of another file or journal lies among these.</summary>
    public bool IsOfOnePiece => Trailers.Count <= 1 && Heads.All(h => h.Id == Last?.Journal);

    /// <summary>Reads the files.</summary>
    public static Found In(Surroundings here, HouseFileNames names)
    {
        if (!here.Files.Exists(names.Main) && !here.Files.Exists(names.Journal))
            throw Faults.NotThere(names.Main);
        var file = here.Files.Exists(names.Main) ? here.Files.Read(names.Main) : null;
        var journal = here.Files.Exists(names.Journal) ? here.Files.Read(names.Journal) : null;
        var trailers = file is null ? [] : TrailersIn(file);
        return new Found(names, file, journal, [.. trailers.Select(t => t.Trailer)], journal is null ? [] : Durable.Journal.Heads(journal),
            file is null ? [] : RowScan.Read(file, [.. trailers.Select(t => t.End)]), journal is null ? [] : Durable.Journal.Lines(journal));
    }

    /// <summary>The entries whose seals fit in a house, and which no other copy of it made after this one.</summary>
    public IEnumerable<Entry> EntriesOf(string house, SealMaker seal)
    {
        var own = TrailerOf(house);
        return Rows.Where(r => r.House.Length == 0 || r.House == house).Select(r => r.Entry)
            .Concat(Lines.Where(l => IsOwn(own, l)).Select(l => l.Entry)).Where(e => Seal.Fits(e, house, seal));
    }

    /// <summary>How many sound lines there are of a journal of another copy of the house: they go on from the same changes, and are not ours.</summary>
    public int LinesOfOtherCopies(string house, SealMaker seal) => Lines.Count(l => !IsOwn(TrailerOf(house), l) && Seal.Fits(l.Entry, house, seal));

    /// <summary>The last page of a house in the file; null when there is none.</summary>
    public Trailer? TrailerOf(string house) => Last is { } last && last.House == house ? last : Trailers.LastOrDefault(t => t.House == house);

    /// <summary>Places in the chain that are known for certain, in a house.</summary>
    public IReadOnlyList<(long Number, string Seal)> AnchorsOf(string house, SealMaker seal)
    {
        var own = TrailerOf(house);
        var anchors = new List<(long, string)>();
        if (own is not null)
            anchors.Add((own.Count, own.Seal));
        foreach (var head in Heads.Where(h => own is null ? h.House == house : h.Id == own.Journal))
            anchors.Add((head.Start, head.After));
        // What is whole in the file's own journal comes before what another copy wrote after the same change.
        if (Journal is not null && Durable.Journal.Read(Journal, house, seal) is { Head: { } begun, Entries: [.., var end] } && begun.Id == own?.Journal)
            anchors.Add((end.Number, end.Seal));
        return anchors;
    }

    /// <summary>Whether a line is of the journal that goes on from the file, of what is in the file anyway, or of this copy's own device.</summary>
    private static bool IsOwn(Trailer? own, (Entry Entry, string Journal) line) => own is null || line.Journal == own.Journal || line.Entry.Number <= own.Count
        || (ChangeJson.Read(line.Entry.Json) is { Ok: true } change && change.Value.Id.Device == own.Device);

    /// <summary>Every last page in a file, and where the house file that it ends ends.</summary>
    private static List<(Trailer Trailer, int End)> TrailersIn(byte[] file)
    {
        var found = new List<(Trailer, int)>();
        for (var at = 0; ;)
        {
            var next = file.AsSpan(at).IndexOf(TrailerStart);
            if (next < 0 || at + next + Trailer.Size > file.Length)
                return found;
            at += next;
            if (Trailer.Read(file.AsSpan(at, Trailer.Size)) is { } trailer)
                found.Add((trailer, at + Trailer.Size));
            at += TrailerStart.Length;
        }
    }
}
