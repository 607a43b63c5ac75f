using TrimOut.Core.History;

namespace TrimOut.Core.Houses;

/// <summary>One value of a field, with who put it there.</summary>
/// <param name="Id">The change that put it.</param>
/// <param name="Stored">The value in its stored form; null when it was taken away.</param>
/// <param name="Value">The decoded value; null when there is none or this version can't read it.</param>
/// <param name="By">Who.</param>
/// <param name="At">When, by that device's clock.</param>
public sealed record Head(ChangeId Id, string? Stored, object? Value, string By, DateTimeOffset At)
{
    /// <summary>The stamp of the change that put it.</summary>
    public long Stamp { get; init; }

    /// <summary>The value that stood there before, where <see cref="EarlierValues"/> are kept of the field; else null.</summary>
    internal Head? Before { get; init; }

    /// <summary>Whether it was put later than another value, by the order of the history: no clock is asked, for a laptop's may be wrong.</summary>
    public bool IsAfter(Head other) => Change.Order(Stamp, Id, other.Stamp, other.Id) > 0;

    /// <summary>What stood in the field when another value was put: this one, an earlier one that is kept, or null where there was none yet.</summary>
    internal Head? When(Head put)
    {
        var then = this;
        while (then is not null && then.IsAfter(put))
            then = then.Before;
        return then;
    }

    /// <summary>The same value by the same change, over the same values: a merge can put another one before it.</summary>
    public bool Equals(Head? other)
    {
        var (one, two) = (this, other);
        while (!ReferenceEquals(one, two))
        {
            if (one is null || two is null || one.Id != two.Id || one.Stamp != two.Stamp || one.Stored != two.Stored || one.By != two.By || one.At != two.At)
                return false;
            (one, two) = (one.Before, two.Before);
        }
        return true;
    }

    /// <inheritdoc/>
    public override int GetHashCode() => HashCode.Combine(Id, Stored);
}
