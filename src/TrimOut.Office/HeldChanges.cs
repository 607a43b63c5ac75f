using System.Globalization;
using TrimOut.Core;
using TrimOut.Core.History;

namespace TrimOut.Office;

/// <summary>Exactly which changes of a house are held somewhere: for each device the numbers, in runs without a gap.</summary>
/// <remarks>A house that was rescued has gaps, so the last number of a device does not say that those before it are there.</remarks>
public sealed class HeldChanges
{
    private readonly SortedDictionary<string, List<(long From, long To)>> _runs = new(StringComparer.Ordinal);

    /// <summary>These changes.</summary>
    /// <param name="changes">Their names, in any order; one may be there twice.</param>
    public static HeldChanges Of(IEnumerable<ChangeId> changes)
    {
        var held = new HeldChanges();
        foreach (var device in changes.GroupBy(c => c.Device, c => c.Sequence))
            held.Put(device.Key, device.Select(n => (n, n)));
        return held;
    }

    /// <summary>How many there are.</summary>
    public long Count => _runs.Values.Sum(runs => runs.Sum(r => r.To - r.From + 1));

    /// <summary>Whether a change is among them.</summary>
    public bool Has(ChangeId change) =>
        _runs.TryGetValue(change.Device, out var runs) && runs.Exists(r => r.From <= change.Sequence && change.Sequence <= r.To);

    /// <summary>Whether a history has all of them.</summary>
    public bool IsIn(HouseLog log) => log.Changes.Count(c => Has(c.Id)) == Count;

    /// <summary>These and others.</summary>
    public HeldChanges With(HeldChanges others)
    {
        var both = new HeldChanges();
        foreach (var device in _runs.Keys.Union(others._runs.Keys))
            both.Put(device, _runs.GetValueOrDefault(device, []).Concat(others._runs.GetValueOrDefault(device, [])));
        return both;
    }

    /// <summary>Reads the written form.</summary>
    /// <param name="text">The text.</param>
    public static Result<HeldChanges> Read(string text)
    {
        var held = new HeldChanges();
        foreach (var device in text.Split(' ', StringSplitOptions.RemoveEmptyEntries))
        {
            var colon = device.LastIndexOf(':');
            var runs = new List<(long, long)>();
            foreach (var run in colon < 1 ? [] : device[(colon + 1)..].Split(','))
            {
                var ends = run.Split('-');
                if (ends.Length is not (1 or 2) || !Number(ends[0], out var from) || !Number(ends[^1], out var to) || to < from)
                    return new Refusal($"\"{device}\" names no changes.");
                runs.Add((from, to));
            }
            if (runs.Count == 0)
                return new Refusal($"\"{device}\" names no changes.");
            held.Put(device[..colon], runs);
        }
        return held;
    }

    /// <summary>The written form: <c>device:1-40,42</c> for each device, with spaces between.</summary>
    public override string ToString() => string.Join(' ', _runs.Select(d => $"{d.Key}:{string.Join(',', d.Value.Select(r =>
        r.From == r.To ? r.From.ToString(CultureInfo.InvariantCulture) : string.Create(CultureInfo.InvariantCulture, $"{r.From}-{r.To}")))}"));

    private static bool Number(string text, out long number) =>
        long.TryParse(text, NumberStyles.None, CultureInfo.InvariantCulture, out number) && number is >= 1 and <= ChangeId.Last;

    private void Put(string device, IEnumerable<(long From, long To)> runs)
    {
        var joined = new List<(long From, long To)>();
        foreach (var run in runs.Order())
        {
            if (joined.Count > 0 && run.From <= joined[^1].To + 1)
                joined[^1] = (joined[^1].From, Math.Max(joined[^1].To, run.To));
            else
                joined.Add(run);
        }
        _runs[device] = joined;
    }
}
