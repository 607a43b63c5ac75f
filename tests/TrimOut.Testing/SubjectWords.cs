using TrimOut.Core.Houses;

namespace TrimOut.Testing;

/// <summary>What pages call a sort of item.</summary>
public static class SubjectWords
{
    public static string Of(ItemKind kind)
    {
        var words = kind == ItemKind.Run ? "home run" : kind == ItemKind.Punch ? "punch item" : KebabCase.Of(kind).Replace('-', ' ');
        return char.ToUpperInvariant(words[0]) + words[1..];
    }
}
