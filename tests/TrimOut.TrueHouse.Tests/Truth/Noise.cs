namespace TrimOut.TrueHouse.Tests.Truth;

/// <summary>
/// The error of one reading, by the seed of the house and by what is read: a house with a fault is read with the same errors as the house without it.
/// </summary>
public sealed class Noise(int seed)
{
    /// <summary>A number from -1 to 1 that always belongs to these words.</summary>
    public double Of(params ReadOnlySpan<string> what)
    {
        unchecked
        {
            var hash = 14695981039346656037UL ^ ((ulong)(uint)seed * 1099511628211UL);
            foreach (var word in what)
            {
                foreach (var letter in word)
                    hash = (hash ^ letter) * 1099511628211UL;
                hash = (hash ^ 31) * 1099511628211UL;
            }
            hash ^= hash >> 29;
            hash *= 0xBF58476D1CE4E5B9UL;
            hash ^= hash >> 32;
            return ((hash >> 11) * (1.0 / (1UL << 53)) * 2) - 1;
        }
    }
}
