using System.Text;

namespace TrimOut.Core.Houses;

/// <summary>The written form of a C# name in files, ids and choices: <c>LightFiltering</c> is <c>light-filtering</c>.</summary>
public static class KebabCase
{
    /// <summary>Lower case, with a hyphen before each inner capital.</summary>
    public static string Of(string name)
    {
        var text = new StringBuilder(name.Length + 4);
        foreach (var letter in name)
        {
            if (char.IsUpper(letter) && text.Length > 0)
                text.Append('-');
            text.Append(char.ToLowerInvariant(letter));
        }
        return text.ToString();
    }

    /// <summary>The written form of an enum value.</summary>
    public static string Of<T>(T value) where T : struct, Enum => Names<T>.Written[value];

    /// <summary>The enum value with that written form, or null.</summary>
    public static T? Read<T>(string written) where T : struct, Enum =>
        Names<T>.Values.TryGetValue(written, out var value) ? value : null;

    private static class Names<T> where T : struct, Enum
    {
        public static readonly Dictionary<T, string> Written = Enum.GetValues<T>().ToDictionary(v => v, v => KebabCase.Of(v.ToString()));
        public static readonly Dictionary<string, T> Values = Written.ToDictionary(p => p.Value, p => p.Key, StringComparer.Ordinal);
    }
}
