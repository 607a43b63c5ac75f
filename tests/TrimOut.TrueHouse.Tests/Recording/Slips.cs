using TrimOut.Core.Facts;

namespace TrimOut.TrueHouse.Tests.Recording;

/// <summary>What an installer writes otherwise than he should, leaves out, or does besides.</summary>
public sealed class Slips
{
    private readonly Dictionary<(string Key, Fact Fact), Func<string, string>> _written = [];
    private readonly HashSet<(string Key, Fact Fact)> _leftOut = [];
    private readonly HashSet<(string Key, string Step)> _unmarked = [];
    private readonly Dictionary<(string Key, Fact Fact), string> _seen = [];
    private readonly List<(Truth.Stage After, Action<Installer> Does)> _besides = [];

    /// <summary>Writes something else to a fact than what was seen.</summary>
    public void Writes(string key, Fact fact, string typed) => _written[(key, fact)] = _ => typed;

    /// <summary>Makes something else of what was seen.</summary>
    public void Writes(string key, Fact fact, Func<string, string> typed) => _written[(key, fact)] = typed;

    /// <summary>Leaves a fact out, and marks its step all the same.</summary>
    public void LeavesOut(string key, Fact fact) => _leftOut.Add((key, fact));

    /// <summary>Leaves a step unmarked.</summary>
    public void LeavesUnmarked(string key, string step) => _unmarked.Add((key, step));

    /// <summary>Does something more when a stage is written down.</summary>
    public void Does(Truth.Stage after, Action<Installer> what) => _besides.Add((after, what));

    /// <summary>All that was seen to be written, before any slip.</summary>
    public IReadOnlyDictionary<(string Key, Fact Fact), string> Seen => _seen;

    /// <summary>What is typed; null when the fact is left out.</summary>
    public string? Typed(string key, Fact fact, string seen)
    {
        _seen.TryAdd((key, fact), seen);
        return _leftOut.Contains((key, fact)) ? null : _written.TryGetValue((key, fact), out var other) ? other(seen) : seen;
    }

    /// <summary>Whether a step is marked.</summary>
    public bool Marks(string key, string step) => !_unmarked.Contains((key, step));

    /// <summary>What is done besides after a stage.</summary>
    public IEnumerable<Action<Installer>> Besides(Truth.Stage after) => _besides.Where(b => b.After == after).Select(b => b.Does);
}
