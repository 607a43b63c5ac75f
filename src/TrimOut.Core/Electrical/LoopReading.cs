using TrimOut.Core.Units;

namespace TrimOut.Core.Electrical;

/// <summary>What a meter can show across the two conductors of a run whose far end is shorted.</summary>
public static class LoopReading
{
    /// <summary>The meter found no way through: it shows no figure.</summary>
    public static readonly Resistance Open = new(decimal.MaxValue);
}
