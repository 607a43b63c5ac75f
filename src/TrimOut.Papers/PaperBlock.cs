using System.Collections.Immutable;

namespace TrimOut.Papers;

/// <summary>What a part of a paper is.</summary>
public enum PaperBlockKind
{
    /// <summary>A heading.</summary>
    Heading,

    /// <summary>A paragraph.</summary>
    Paragraph,

    /// <summary>One item of a list.</summary>
    Item,

    /// <summary>A table; its first row is its head.</summary>
    Table,
}

/// <summary>A piece of text on a paper.</summary>
/// <param name="Text">The text; of a picture, its description.</param>
/// <param name="Strong">Whether it stands out.</param>
/// <param name="Picture">Whether it stands for a picture.</param>
public readonly record struct PaperText(string Text, bool Strong = false, bool Picture = false);

/// <summary>A part of a paper as a reader sees it, for showing it where there is no browser.</summary>
/// <param name="Kind">What it is.</param>
/// <param name="Level">Of a heading from 1 on; of an item how deep its list lies, from 0 on.</param>
/// <param name="Mark">What stands before an item; empty for all else.</param>
/// <param name="Text">Its text; none for a table.</param>
/// <param name="Rows">The rows of a table, cell by cell; none for all else.</param>
public sealed record PaperBlock(PaperBlockKind Kind, int Level, string Mark, ImmutableArray<PaperText> Text,
    ImmutableArray<ImmutableArray<ImmutableArray<PaperText>>> Rows);
