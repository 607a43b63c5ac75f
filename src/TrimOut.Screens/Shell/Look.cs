namespace TrimOut.Screens.Shell;

/// <summary>One of the three looks.</summary>
internal sealed record Look(string Name)
{
    public static readonly Look Dark = new("dark");
    public static readonly Look Sunlight = new("sunlight");
    public static readonly Look Plain = new("plain");

    public static IReadOnlyList<Look> All { get; } = [Dark, Sunlight, Plain];

    public Look Next => All[(All.ToList().IndexOf(this) + 1) % All.Count];

    /// <summary>The look of that name; dark when there is none.</summary>
    public static Look Named(string? name) => All.FirstOrDefault(l => l.Name == name) ?? Dark;
}
