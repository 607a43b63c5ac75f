using System.Collections.Frozen;
using TrimOut.Core.Houses;

namespace TrimOut.Core.Facts.Forms;

/// <summary>One of a few named values; the first letters are enough to type.</summary>
internal sealed class ChoiceForm<T> : Form<T>
    where T : struct, Enum
{
    private static readonly FrozenDictionary<T, string> Names =
        Enum.GetValues<T>().ToFrozenDictionary(v => v, NameOf);
    private static readonly Option[] All = [.. Enum.GetValues<T>().Select(v => new Option(KebabCase.Of(v), Names[v]))];

    public override bool IsChoice => true;

    public override string Hint => string.Join(", ", All.Select(o => o.Shown));

    public override Result<T> Read(string typed, House house)
    {
        var text = typed.Replace(' ', '-').ToLowerInvariant();
        if (KebabCase.Read<T>(text) is { } exact)
            return exact;
        var shown = Spelling.Shown(typed.Replace('-', ' '));
        var matches = Enum.GetValues<T>().Where(v => text.Length > 0
            && (KebabCase.Of(v).StartsWith(text, StringComparison.Ordinal) || Names[v].StartsWith(shown, StringComparison.OrdinalIgnoreCase))).ToList();
        if (matches.Count == 0)
            matches = [.. Enum.GetValues<T>().Where(v => text.Length > 1 && NameWords.Begin(Names[v], typed))];
        return matches.Count == 1 ? matches[0] : new Refusal($"\"{typed}\" is none of: {Hint}.");
    }

    public override string Write(T value) => KebabCase.Of(value);

    public override Result<T> Decode(string stored) => KebabCase.Read<T>(stored) is { } value ? value : new Refusal($"\"{stored}\" is not known here.");

    public override string Show(T value, House house) => Names[value];

    public override IReadOnlyList<Option> Options(House house) => All;

    // English writes months with a capital.
    private static string NameOf(T value) => Spelling.Shown(KebabCase.Of(value).Replace('-', ' ')) is var name && typeof(T) == typeof(Month)
        ? char.ToUpperInvariant(name[0]) + name[1..]
        : name;
}
