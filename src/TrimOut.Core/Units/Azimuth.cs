namespace TrimOut.Core.Units;

/// <summary>A compass direction, in degrees clockwise from north: 0 is north, 90 is east.</summary>
/// <param name="Degrees">From 0 up to, but not including, 360.</param>
public readonly record struct Azimuth(decimal Degrees)
{
    private static readonly string[] Points =
        ["N", "NNE", "NE", "ENE", "E", "ESE", "SE", "SSE", "S", "SSW", "SW", "WSW", "W", "WNW", "NW", "NNW"];

    private static readonly string[] Words = ["north", "east", "south", "west"];

    /// <summary>The nearest of the sixteen compass points.</summary>
    public string Point => Points[(int)Math.Round(Degrees / 22.5m, MidpointRounding.AwayFromZero) % 16];

    /// <summary>Reads degrees or a compass point: <c>180</c>, <c>SSW</c>, <c>south-west</c>.</summary>
    public static Result<Azimuth> Read(string? typed)
    {
        var text = (typed ?? "").Trim();
        var letters = Words.Aggregate(text.ToLowerInvariant(), (t, w) => t.Replace(w, w[..1], StringComparison.Ordinal))
            .Replace("-", "", StringComparison.Ordinal).Replace(" ", "", StringComparison.Ordinal);
        var point = Array.FindIndex(Points, p => string.Equals(p, letters, StringComparison.OrdinalIgnoreCase));
        if (point >= 0)
            return new Azimuth(point * 22.5m);
        return NumberText.Read(text, "degrees", 0, 360, ("", 1), ("deg", 1), ("degrees", 1)) is { Ok: true } degrees
            ? new Azimuth(degrees.Value % 360)
            : new Refusal($"\"{text}\" is no direction. Type a compass point such as SW or degrees from 0 to 360.");
    }

    /// <summary>The point where it is one exactly, and degrees otherwise.</summary>
    public override string ToString() => Degrees % 22.5m == 0 ? Point : NumberText.Show(Degrees, "deg");
}
