using System.Collections.Immutable;
using System.Text.Json;
using System.Text.Json.Serialization;
using TrimOut.Core.History;

namespace TrimOut.Office;

/// <summary>A point of the office's past of a house that this device knows.</summary>
/// <param name="Arrival">The arrival number.</param>
/// <param name="Token">What the office says of the change that arrived under it; another token is another past.</param>
/// <param name="Held">Exactly the changes that arrived up to it, as <see cref="HeldChanges"/> writes them.</param>
public sealed record OfficePoint(int Arrival, Guid Token, string Held);

/// <summary>How far a house file and the office know of each other. A memory, and no truth: thrown away, it is worked out again.</summary>
/// <remarks>
/// A point counts for going on only where the house file has every change that it holds: an older copy of the file that was put back does not, and is
/// sent everything again. Points above that one, of news that were fetched and not yet taken in, still say what is at the office.
/// </remarks>
/// <param name="House">The house's number at the office.</param>
/// <param name="Exchanged">When the two last exchanged everything, by this device's clock: shown, never sorted by.</param>
/// <param name="Points">The points, the highest first.</param>
public sealed record ExchangeMark(int House, DateTimeOffset Exchanged, ImmutableArray<OfficePoint> Points)
{
    /// <summary>The changes of a history that are not at the office as far as this device knows, in their order.</summary>
    /// <param name="mark">The mark; null where nothing was ever exchanged.</param>
    /// <param name="log">The history.</param>
    public static IReadOnlyList<Change> NotYetThere(ExchangeMark? mark, HouseLog log) =>
        mark is null ? log.Changes : HeldBy(mark.Points) is var held ? [.. log.Changes.Where(c => !held.Has(c.Id))] : [];

    /// <summary>How many changes are at the office as far as this device knows, and not in a history.</summary>
    /// <param name="mark">The mark; null where nothing was ever exchanged.</param>
    /// <param name="log">The history.</param>
    public static int PutOff(ExchangeMark? mark, HouseLog log) =>
        mark is not null && HeldBy(mark.Points) is var held ? (int)Math.Min(held.Count, int.MaxValue) - log.Changes.Count(c => held.Has(c.Id)) : 0;

    /// <summary>How many changes of a house are not at the office, and how many there are not in it, as far as this device knows.</summary>
    /// <param name="mark">The mark; null where nothing was ever exchanged.</param>
    /// <param name="held">The changes of the house.</param>
    public static (int NotYetThere, int PutOff) Between(ExchangeMark? mark, HeldChanges held)
    {
        var there = HeldBy(mark?.Points ?? []);
        var both = there.With(held).Count;
        return ((int)Math.Min(both - there.Count, int.MaxValue), (int)Math.Min(both - held.Count, int.MaxValue));
    }

    /// <summary>Reads the written form; what can't be read counts as no mark.</summary>
    public static ExchangeMark? Read(ReadOnlySpan<byte> text)
    {
        try
        {
            return JsonSerializer.Deserialize(text, ExchangeMarkJson.Default.ExchangeMark) is { Points.IsDefault: false } mark
                && mark.Points.All(p => p.Held is not null && HeldChanges.Read(p.Held).Ok) ? mark : null;
        }
        catch (JsonException)
        {
            return null;
        }
    }

    /// <summary>The written form.</summary>
    public byte[] Write() => JsonSerializer.SerializeToUtf8Bytes(this, ExchangeMarkJson.Default.ExchangeMark);

    /// <summary>What some points hold together.</summary>
    internal static HeldChanges HeldBy(IEnumerable<OfficePoint> points) =>
        points.Aggregate(HeldChanges.Of([]), (held, point) => held.With(HeldChanges.Read(point.Held).Value));
}

[JsonSourceGenerationOptions(JsonSerializerDefaults.Web)]
[JsonSerializable(typeof(ExchangeMark))]
internal sealed partial class ExchangeMarkJson : JsonSerializerContext;
