namespace TrimOut.Papers.Templates;

/// <summary>What a template is made of, piece by piece: text, and what stands in double braces.</summary>
/// <param name="Sort">What it does.</param>
/// <param name="Text">The text, or the name of the place; what closes a condition is named too.</param>
/// <param name="Line">The line that it begins in, from 1.</param>
/// <param name="EatsBefore">Whether it takes away the spaces and line ends before it: <c>{{~</c>.</param>
/// <param name="EatsAfter">Whether it takes away the spaces and line ends behind it: <c>~}}</c>.</param>
internal sealed record TemplateSign(TemplateSign.Of Sort, string Text, int Line, bool EatsBefore = false, bool EatsAfter = false)
{
    /// <summary>What a piece does.</summary>
    public enum Of
    {
        /// <summary>It stands as it is.</summary>
        Words,

        /// <summary>What stands in the place comes here.</summary>
        Place,

        /// <summary>What follows stands there where the place has something.</summary>
        If,

        /// <summary>What follows stands there where the place has nothing.</summary>
        Unless,

        /// <summary>What follows stands there otherwise.</summary>
        Else,

        /// <summary>What follows stands there otherwise, where the place has something.</summary>
        ElseIf,

        /// <summary>A condition ends.</summary>
        End,

        /// <summary>Nothing comes of it.</summary>
        Comment,
    }

    /// <summary>The word that ends what a condition began.</summary>
    public string EndedBy { get; init; } = "";

    /// <summary>Whether a line that holds nothing else leaves no line.</summary>
    public bool LeavesNoLine => Sort is not (Of.Words or Of.Place);
}
