using System.Text;
using TrimOut.HouseFile.Files;

namespace TrimOut.HouseFile.Durable;

/// <summary>The lines of a journal, one after the other, with no more of it in memory than one line takes.</summary>
/// <param name="file">The journal.</param>
/// <param name="overZeros">Whether zeros before a line are no part of it: a line that was joined to what was cut off before it is still whole.</param>
internal sealed class ByteLines(IReadFile file, bool overZeros = false)
{
    /// <summary>The most bytes of a line: a change's text, and its place in the chain before it.</summary>
    public const int Longest = Entry.LongestJson + 1024;

    private const int Piece = 64 * 1024;

    private byte[] _buffer = new byte[Piece];
    private long _from;
    private int _held;
    private int _used;

    /// <summary>Where the line ends that was read last: behind its line feed.</summary>
    public long At => _from + _used;

    /// <summary>The next line without its line feed, empty where it is longer than any can be; null when no line feed follows.</summary>
    public string? Next()
    {
        var searched = 0;
        var tooLong = false;
        while (true)
        {
            if (overZeros && searched == 0 && !tooLong)
                SkipZeros();
            var end = _buffer.AsSpan(_used + searched, _held - _used - searched).IndexOf((byte)'\n');
            if (end >= 0)
            {
                var line = _buffer.AsSpan(_used, searched + end);
                _used += searched + end + 1;
                return tooLong || line.Length > Longest ? "" : Encoding.UTF8.GetString(line);
            }
            searched = _held - _used;
            if (searched > Longest)
            {
                tooLong = true;
                _used = _held;
                searched = 0;
            }
            if (!Fill())
                return null;
        }
    }

    private void SkipZeros()
    {
        var first = _buffer.AsSpan(_used, _held - _used).IndexOfAnyExcept((byte)0);
        _used = first < 0 ? _held : _used + first;
    }

    /// <summary>Reads on, behind what was not used yet.</summary>
    private bool Fill()
    {
        _buffer.AsSpan(_used, _held - _used).CopyTo(_buffer);
        (_from, _held, _used) = (_from + _used, _held - _used, 0);
        if (_buffer.Length - _held < Piece)
            Array.Resize(ref _buffer, _buffer.Length * 2);
        var read = file.Read(_from + _held, _buffer.AsSpan(_held));
        _held += read;
        return read > 0;
    }
}
