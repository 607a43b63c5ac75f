using System.Numerics;

namespace TrimOut.Core.Reads;

/// <summary>Notes what is read of a house while something is worked out from it.</summary>
/// <remarks>
/// There is one recorder at a time on a thread: reading passes through items and houses that are shared by everybody, and whoever
/// works something out can't forget to hand the recorder on. What is worked out must be through when the recording ends.
/// </remarks>
internal sealed class ReadRecorder
{
    private const int SeenBits = 7;

    [ThreadStatic]
    private static ReadRecorder? _current;

    // Of what was just read, so that it is noted once: a key that another one pushed out may be noted twice, which does no harm.
    private readonly long[] _seen = new long[1 << SeenBits];
    private long[] _keys = new long[64];
    private int _count;
    private ReadRecorder? _outer;

    /// <summary>Whether anybody records.</summary>
    public static bool IsOn => _current is not null;

    /// <summary>Notes a read, where anybody records.</summary>
    public static void Note(ReadKey key) => _current?.Add(key.Value);

    /// <summary>Works something out of which nobody needs to know what it read.</summary>
    public static T Unnoted<T>(Func<T> work)
    {
        var outer = _current;
        _current = null;
        try
        {
            return work();
        }
        finally
        {
            _current = outer;
        }
    }

    /// <summary>Begins to note; <see cref="End"/> must follow, whatever happens.</summary>
    public void Begin()
    {
        Array.Clear(_seen);
        (_count, _outer, _current) = (0, _current, this);
    }

    /// <summary>Ends to note.</summary>
    /// <returns>What was read, good until the next beginning.</returns>
    public ReadOnlySpan<long> End()
    {
        _current = _outer;
        return _keys.AsSpan(0, _count);
    }

    /// <summary>Works something out and gives what it read as a set.</summary>
    public static T Record<T>(Func<T> work, out HashSet<long> reads)
    {
        var recorder = new ReadRecorder();
        recorder.Begin();
        try
        {
            return work();
        }
        finally
        {
            reads = [.. recorder.End()];
        }
    }

    private void Add(long key)
    {
        ref var seen = ref _seen[(int)(unchecked((ulong)key * 0x9E3779B97F4A7C15UL) >> (64 - SeenBits))];
        if (seen == ~key)
            return;
        seen = ~key;
        if (_count == _keys.Length)
            Array.Resize(ref _keys, (int)BitOperations.RoundUpToPowerOf2((uint)_count + 1));
        _keys[_count++] = key;
    }
}
