using TrimOut.Core.Checks;
using TrimOut.Core.Houses;

namespace TrimOut.Papers.Writing;

/// <summary>What the marked figures of a paper rest on, noted while it is written: whoever gives a figure its mark says by which values, and of what.</summary>
internal sealed class PrintedMarks
{
    [ThreadStatic]
    private static PrintedMarks? _current;

    private readonly List<PrintedMark> _noted = [];

    /// <summary>Writes something, and says what its marked figures rest on, each once.</summary>
    public static (T Written, IReadOnlyList<PrintedMark> Marks) In<T>(Func<T> write)
    {
        var (outer, marks) = (_current, new PrintedMarks());
        _current = marks;
        try
        {
            return (write(), [.. marks._noted.Distinct()]);
        }
        finally
        {
            _current = outer;
        }
    }

    /// <summary>Notes what a figure rests on.</summary>
    /// <param name="values">The values that nobody checked, as fields of their parts.</param>
    /// <param name="of">The unit whose figure it is; null for one of a part itself.</param>
    public static void Note(IEnumerable<FieldRef> values, Unit? of) => _current?._noted.AddRange(values.Select(v => new PrintedMark(v, of?.Id)));
}

/// <summary>A value that nobody checked, and that a printed figure rests on.</summary>
/// <param name="Value">The value, as a field of its part.</param>
/// <param name="Unit">The unit whose figure it is, by its id; null for one of the part itself.</param>
internal readonly record struct PrintedMark(FieldRef Value, string? Unit);
