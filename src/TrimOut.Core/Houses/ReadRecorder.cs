namespace TrimOut.Core.Houses;

/// <summary>Notes what is read of a house while something is worked out from it.</summary>
/// <remarks>
/// There is one recorder at a time on a thread: reading passes through items and houses that are shared by everybody, and whoever
/// works something out can't forget to hand the recorder on.
/// </remarks>
internal sealed class ReadRecorder
{
    private const int FewEnough = 48;

    [ThreadStatic]
    private static ReadRecorder? _current;

    private readonly HashSet<long> _many = [];
    private long[] _keys = new long[FewEnough];
    private int _count;
    private ReadRecorder? _outer;

    /// <summary>Notes a read, where anybody records.</summary>
    public static void Note(ReadKey key) => _current?.Add(key.Value);

    /// <summary>Whether anybody records.</summary>
    public static bool IsOn => _current is not null;

    /// <summary>Works something out and notes what it read.</summary>
    /// <param name="work">The work; it must be through when it returns, with nothing left to be read later.</param>
    /// <param name="reads">What was read, each once.</param>
    public T Record<T>(Func<T> work, out long[] reads)
    {
        (_count, _outer, _current) = (0, _current, this);
        _many.Clear();
        try
        {
            var result = work();
            reads = _keys.AsSpan(0, _count).ToArray();
            return result;
        }
        finally
        {
            _current = _outer;
        }
    }

    private void Add(long key)
    {
        if (_count < FewEnough ? _keys.AsSpan(0, _count).Contains(key) : !AddToMany(key))
            return;
        if (_count == _keys.Length)
            Array.Resize(ref _keys, _count * 2);
        _keys[_count++] = key;
    }

    private bool AddToMany(long key)
    {
        if (_many.Count == 0)
            _many.UnionWith(_keys.AsSpan(0, _count).ToArray());
        return _many.Add(key);
    }
}
