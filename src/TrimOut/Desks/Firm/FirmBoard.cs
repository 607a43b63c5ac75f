using TrimOut.HouseFile;
using TrimOut.Screens.Firm;

namespace TrimOut.Desks.Firm;

/// <summary>
/// The houses of a firm while they are looked at: shown at once as they were kept, and made anew beside the keys, one after the other; also those that somebody
/// changes meanwhile, that come, or that go away.
/// </summary>
internal sealed class FirmBoard : IFirmBoard
{
    private static readonly TimeSpan Beat = TimeSpan.FromSeconds(2);

    private readonly TaskCompletionSource _over = new();
    private volatile FirmRow[] _rows;
    private volatile IReadOnlyList<FirmRow> _once;

    private readonly IReadOnlyList<string> _places;

    private FirmBoard(IReadOnlyList<string> places)
    {
        _places = places;
        _rows = FirmHouses.Kept(FirmHouses.Find(places));
        _once = FirmHouses.Once(_rows);
    }

    /// <inheritdoc/>
    public IReadOnlyList<FirmRow> Rows => _once;

    /// <inheritdoc/>
    public int Left => _over.Task.IsCompleted ? 0 : _rows.Count(r => r.Stale);

    /// <inheritdoc/>
    public bool IsWatched => !_over.Task.IsCompleted;

    /// <summary>
    /// Shows the houses of folders, begins to make anew what is stale, and looks every other second whether one was changed, came, or went away.
    /// </summary>
    /// <param name="places">Folders, or house files.</param>
    public static FirmBoard Of(IReadOnlyList<string> places)
    {
        var board = new FirmBoard(places);
        new Thread(board.Watch) { IsBackground = true, Priority = ThreadPriority.BelowNormal, Name = "Summaries of houses" }.Start();
        return board;
    }

    /// <inheritdoc/>
    public void Stop() => _over.TrySetResult();

    private void Watch()
    {
        var stamps = new Dictionary<string, string?>(StringComparer.Ordinal);
        do
        {
            if (stamps.Count > 0)
                Find();
            for (var at = 0; at < _rows.Length && !_over.Task.IsCompleted; at++)
            {
                var stamp = Stamp(_rows[at].Path);
                // The first look is at what is kept; from then on at what was seen the beat before. One that could not be read and now can is read again.
                if (stamps.TryGetValue(_rows[at].Path, out var before) && stamp is not null && stamp != before)
                    Show(at, _rows[at] with { Stale = true });
                stamps[_rows[at].Path] = stamp;
            }
            for (var at = 0; at < _rows.Length && !_over.Task.IsCompleted; at++)
            {
                if (_rows[at].Stale)
                    Show(at, MadeAnew(_rows[at]));
            }
        }
        while (!_over.Task.Wait(Beat));
    }

    /// <summary>Houses that came have a row from now on, and those that went away have none any more.</summary>
    private void Find()
    {
        var found = FirmHouses.Find(_places);
        if (found.SequenceEqual(_rows.Select(r => r.Path)))
            return;
        var known = _rows.ToDictionary(r => r.Path);
        Show([.. found.Select(p => known.GetValueOrDefault(p) ?? FirmHouses.Kept(p))]);
    }

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

    private void Show(int at, FirmRow row)
    {
        FirmRow[] rows = [.. _rows];
        rows[at] = row;
        Show(rows);
    }

    private void Show(FirmRow[] rows)
    {
        _rows = rows;
        _once = FirmHouses.Once(rows);
    }
}
