using TrimOut.Core.History;
using TrimOut.HouseFile;
using TrimOut.Office;
using TrimOut.Screens.Firm;

namespace TrimOut.Desks.Firm;

/// <summary>
/// The houses of a firm while they are looked at: shown at once as they were kept, and made anew beside the keys, one after the other; also those that somebody
/// changes, brings or takes away meanwhile, and those that may be read again.
/// </summary>
internal sealed class FirmBoard : IFirmBoard
{
    private static readonly TimeSpan Beat = TimeSpan.FromSeconds(2);

    private readonly TaskCompletionSource _over = new();
    private readonly Func<IReadOnlyList<string>> _find;
    private readonly Credentials? _office;
    private Seen[] _seen;
    private volatile FirmHousesNow _now;

    private FirmBoard(Func<IReadOnlyList<string>> find, Credentials? office)
    {
        (_find, _office) = (find, office);
        _seen = Look(new Dictionary<string, Seen>());
        _now = Of(_seen);
    }

    /// <inheritdoc/>
    public FirmHousesNow Now => _now;

    /// <summary>
    /// Shows houses, begins to make anew what is stale, and looks every other second whether one was changed, came, went, or may be read again.
    /// </summary>
    /// <param name="find">The house files that there are now, in their order.</param>
    /// <param name="office">What this machine is known by at the office; null where it is at none.</param>
    public static FirmBoard Of(Func<IReadOnlyList<string>> find, Credentials? office = null)
    {
        var board = new FirmBoard(find, office);
        new Thread(board.Watch) { IsBackground = true, Priority = ThreadPriority.BelowNormal, Name = "Summaries of houses" }.Start();
        return board;
    }

    /// <inheritdoc/>
    public void Stop() => _over.TrySetResult();

    private void Watch()
    {
        do
        {
            for (var at = 0; at < _seen.Length && !_over.Task.IsCompleted; at++)
            {
                if (_seen[at].Row.Stale)
                    Show([.. _seen.Take(at), See(MadeAnew(_seen[at].Row), _seen[at].Stamp), .. _seen.Skip(at + 1)]);
            }
            if (_over.Task.Wait(Beat))
                return;
            var looked = Look(_seen.ToDictionary(s => s.Row.Path, StringComparer.Ordinal));
            if (!looked.SequenceEqual(_seen))
                Show(looked);
        }
        while (true);
    }

    /// <summary>The houses that there are now: what is known of each, and whether that still is so.</summary>
    private Seen[] Look(IReadOnlyDictionary<string, Seen> before)
    {
        var paths = _find();
        var seen = new Seen[paths.Count];
        // The stamp is taken first: what is written in between makes a row a stale one with the next look, never a wrong one.
        // While somebody looks, one core stays free for the keys.
        var cores = new ParallelOptions { MaxDegreeOfParallelism = before.Count == 0 ? -1 : 1 };
        Parallel.For(0, paths.Count, cores, at => seen[at] = Stamp(paths[at]) is var stamp && !before.TryGetValue(paths[at], out var known)
            ? See(FirmHouses.Kept(paths[at]), stamp)
            : known!.Stamp != stamp ? See(known.Row with { Stale = true }, stamp)
            : known.Marked == MarkedAt(known.Row) ? known : See(known.Row, stamp));
        return seen;
    }

    /// <summary>A row with what is known of the office, which changes while the house does not.</summary>
    private Seen See(FirmRow row, string? stamp)
    {
        // The time first, as with the stamp.
        var marked = MarkedAt(row);
        return new Seen(_office is not null && Begun(row) is { } begun && HeldChanges.Read(row.Held) is { Ok: true } held
            ? row with { AtOffice = ExchangeMark.Between(OfficePlace.MarkOf(_office, begun), held.Value) } : row, stamp, marked);
    }

    private DateTime? MarkedAt(FirmRow row) => _office is not null && Begun(row) is { } begun ? OfficePlace.MarkedAt(_office, begun) : null;

    private static ChangeId? Begun(FirmRow row) => row.Summary is { } summary ? ChangeId.Read(summary.Begun) : null;

    private static FirmRow MadeAnew(FirmRow row)
    {
        try
        {
            return FirmHouses.MakeAnew(row.Path);
        }
        catch (Exception fault)
        {
            // A fault of the program's own in one house is no reason to show nothing of the others.
            return row with { Why = fault.Message, Stale = false };
        }
    }

    /// <summary>The stamp of a house file; null where it can't be read.</summary>
    private static string? Stamp(string path)
    {
        try
        {
            return HouseStamp.Of(path);
        }
        catch (Exception failed) when (failed is IOException or UnauthorizedAccessException)
        {
            return null;
        }
    }

    private void Show(Seen[] seen) => (_seen, _now) = (seen, Of(seen));

    private static FirmHousesNow Of(Seen[] seen) => new(FirmHouses.Once([.. seen.Select(s => s.Row)]), seen.Count(s => s.Row.Stale));

    /// <param name="Row">What is known of a house.</param>
    /// <param name="Stamp">The stamp of its file when that was last looked at; null where it could not be read.</param>
    /// <param name="Marked">When it was last remembered how far it was exchanged with the office; null where there is none.</param>
    private sealed record Seen(FirmRow Row, string? Stamp, DateTime? Marked);
}
