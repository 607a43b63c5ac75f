namespace TrimOut.TrueHouse.Tests.Truth;

/// <summary>Chance by a seed: the same seed rolls the same house on every machine.</summary>
public sealed class Dice(int seed)
{
    private readonly Random _random = new(seed);

    /// <summary>A number between two others.</summary>
    public double Between(double least, double most) => least + (_random.NextDouble() * (most - least));

    /// <summary>A whole number from the least to the most, both included.</summary>
    public int Whole(int least, int most) => _random.Next(least, most + 1);

    /// <summary>Whether something with that chance happens.</summary>
    public bool Chance(double of) => _random.NextDouble() < of;

    /// <summary>One of several.</summary>
    public T Of<T>(IReadOnlyList<T> several) => several[_random.Next(several.Count)];

    /// <summary>Several in random order.</summary>
    public List<T> Shuffled<T>(IEnumerable<T> several) => [.. several.Select(s => (Thing: s, At: _random.Next())).OrderBy(p => p.At).Select(p => p.Thing)];
}
