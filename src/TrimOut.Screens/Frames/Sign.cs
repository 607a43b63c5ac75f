namespace TrimOut.Screens.Frames;

/// <summary>A sign with what it means: screens and drawings draw it from here, and the help reads it from here.</summary>
/// <param name="Drawn">The sign, as the terminal has it.</param>
/// <param name="Means">What it says, as it follows the sign.</param>
internal sealed record Sign(Func<Glyphs, string> Drawn, string Means)
{
    /// <summary>Words, such as the heading of a column, that are the same on every terminal.</summary>
    public static Sign Words(string words, string means) => new(_ => words, means);
}
