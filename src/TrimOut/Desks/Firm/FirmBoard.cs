using TrimOut.Screens.Firm;

namespace TrimOut.Desks.Firm;

/// <summary>The houses of a firm while they are looked at: shown at once as they were kept, and made anew beside the keys, one after the other.</summary>
internal sealed class FirmBoard : IFirmBoard
{
    private const int Beats = 500;

    private volatile FirmRow[] _rows;
    private volatile int _left;
    private volatile bool _stopped;

    private FirmBoard(FirmRow[] rows) => (_rows, _left) = (rows, rows.Count(r => r.Stale));

    /// <inheritdoc/>
    public IReadOnlyList<FirmRow> Rows => _rows;

    /// <inheritdoc/>
    public int Left => _stopped ? 0 : _left;

    /// <summary>Shows these houses, and begins to make anew what is stale.</summary>
    public static FirmBoard Of(IReadOnlyList<string> paths)
    {
        var board = new FirmBoard(FirmHouses.Kept(paths));
        if (board._left > 0)
            new Thread(board.MakeAnew) { IsBackground = true, Priority = ThreadPriority.BelowNormal, Name = "Summaries of houses" }.Start();
        return board;
    }

    /// <summary>Makes no further house anew; what is shown stays.</summary>
    public void Stop() => _stopped = true;

    private void MakeAnew()
    {
        for (var at = 0; at < _rows.Length && !_stopped; at++)
        {
            if (!_rows[at].Stale)
                continue;
            FirmRow[] rows = [.. _rows];
            try
            {
                rows[at] = FirmHouses.MakeAnew(rows[at].Path);
            }
            catch (Exception fault)
            {
                // A fault of the program's own in one house is no reason to show nothing of the others.
                rows[at] = rows[at] with { Why = fault.Message, Stale = false };
            }
            _rows = rows;
            // The screen is drawn to a beat as long as something is left: the last house is to be seen with it.
            if (_left == 1)
                Thread.Sleep(Beats);
            _left--;
        }
    }
}
