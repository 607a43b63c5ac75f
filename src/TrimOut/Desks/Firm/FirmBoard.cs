using TrimOut.HouseFile;
using TrimOut.Screens.Firm;

namespace TrimOut.Desks.Firm;

/// <summary>
/// The houses of a firm while they are looked at: shown at once as they were kept, and made anew beside the keys, one after the other; also those that somebody
/// changes meanwhile.
/// </summary>
internal sealed class FirmBoard : IFirmBoard
{
    private static readonly TimeSpan Beat = TimeSpan.FromSeconds(2);

    private readonly TaskCompletionSource _over = new();
    private volatile FirmRow[] _rows;
    private volatile IReadOnlyList<FirmRow> _once;

    private FirmBoard(FirmRow[] rows) => (_rows, _once) = (rows, FirmHouses.Once(rows));

    /// <inheritdoc/>
    public IReadOnlyList<FirmRow> Rows => _once;

    /// <inheritdoc/>
    public int Left => _over.Task.IsCompleted ? 0 : _rows.Count(r => r.Stale);

    /// <inheritdoc/>
    public bool IsWatched => !_over.Task.IsCompleted && _rows.Length > 0;

    /// <summary>Shows these houses, begins to make anew what is stale, and looks every other second whether one was changed.</summary>
    public static FirmBoard Of(IReadOnlyList<string> paths)
    {
        var board = new FirmBoard(FirmHouses.Kept(paths));
        if (paths.Count > 0)
            new Thread(board.Watch) { IsBackground = true, Priority = ThreadPriority.BelowNormal, Name = "Summaries of houses" }.Start();
        return board;
    }

    /// <inheritdoc/>
    public void Stop() => _over.TrySetResult();

    private void Watch()
    {
        var stamps = new string?[_rows.Length];
        do
        {
            for (var at = 0; at < _rows.Length && !_over.Task.IsCompleted; at++)
            {
                var stamp = Stamp(_rows[at].Path);
                // The first look is at what is kept; from then on at what was seen the beat before.
                if (stamps[at] is { } before && stamp is not null && stamp != before)
                    Show(at, _rows[at] with { Stale = true });
                stamps[at] = stamp ?? stamps[at];
            }
            for (var at = 0; at < _rows.Length && !_over.Task.IsCompleted; at++)
            {
                if (_rows[at].Stale)
                    Show(at, MadeAnew(_rows[at]));
            }
        }
        while (!_over.Task.Wait(Beat));
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
        // Whoever sees that nothing is left sees what came of it.
        _once = FirmHouses.Once(rows);
        _rows = rows;
    }
}
