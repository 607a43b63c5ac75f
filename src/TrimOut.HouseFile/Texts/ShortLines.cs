using System.Text;

namespace TrimOut.HouseFile.Texts;

/// <summary>The lines of a text, none of them longer than is asked for: an endless one would take all the memory there is.</summary>
/// <param name="text">The text.</param>
/// <param name="longest">The most characters of a line.</param>
public sealed class ShortLines(TextReader text, int longest)
{
    private readonly char[] _buffer = new char[8192];
    private readonly StringBuilder _line = new();
    private int _at;
    private int _read;

    /// <summary>The number of the line that was read last, from 1.</summary>
    public int Number { get; private set; }

    /// <summary>Whether that line is longer than asked for: then only its beginning was read, and reading ends.</summary>
    public bool TooLong { get; private set; }

    /// <summary>The next line, without its end; null when there is none.</summary>
    /// <exception cref="IOException">The text can't be read.</exception>
    public string? Next()
    {
        if (TooLong || (_at == _read && !Fill()))
            return null;
        Number++;
        _line.Clear();
        do
        {
            var rest = _buffer.AsSpan(_at, _read - _at);
            var end = rest.IndexOf('\n');
            _line.Append(end < 0 ? rest : rest[..end]);
            _at += end < 0 ? rest.Length : end + 1;
            if (_line.Length > longest)
            {
                TooLong = true;
                return _line.ToString(0, longest);
            }
            if (end >= 0)
                break;
        }
        while (Fill());
        if (_line.Length > 0 && _line[^1] == '\r')
            _line.Length--;
        return _line.ToString();
    }

    private bool Fill()
    {
        (_at, _read) = (0, text.Read(_buffer));
        return _read > 0;
    }
}
