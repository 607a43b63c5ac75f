namespace TrimOut.Papers.Drawings;

/// <summary>How a line is drawn.</summary>
internal enum Pen
{
    /// <summary>Not at all.</summary>
    None,

    /// <summary>Dimension lines.</summary>
    Hair,

    /// <summary>Edges.</summary>
    Thin,

    /// <summary>What the drawing is about.</summary>
    Thick,

    /// <summary>Cable.</summary>
    Dashed,
}

/// <summary>How a shape is filled.</summary>
internal enum Fill
{
    /// <summary>One sees through it.</summary>
    None,

    /// <summary>White, hiding what is behind.</summary>
    White,

    /// <summary>Light grey, which a printer shows as a fine raster.</summary>
    Light,

    /// <summary>Black.</summary>
    Black,
}

/// <summary>Which point of a text its place is.</summary>
internal enum Anchored
{
    /// <summary>Its start.</summary>
    Start,

    /// <summary>Its middle.</summary>
    Middle,

    /// <summary>Its end.</summary>
    End,
}
