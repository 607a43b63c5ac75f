namespace TrimOut.Screens.Shell;

/// <summary>A piece of a line on which a click does what a key does, or puts the cursor there.</summary>
/// <param name="X">Its first column on the screen.</param>
/// <param name="Y">Its line.</param>
/// <param name="Width">How many columns it takes.</param>
/// <param name="Stroke">The key that it presses; null where it is a row.</param>
/// <param name="Choose">The screen with the cursor there; null, or giving null, where the cursor does not stop there.</param>
/// <param name="IsChosen">Whether the cursor is there already: then a click opens.</param>
internal sealed record Spot(int X, int Y, int Width, string? Stroke, Func<IScreen?>? Choose = null, bool IsChosen = false)
{
    /// <summary>Whether a place lies in it.</summary>
    public bool Covers(int x, int y) => y == Y && x >= X && x < X + Width;
}
