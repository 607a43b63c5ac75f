using System.Globalization;
using System.Text;

namespace TrimOut.Shells;

/// <summary>Completion for fish.</summary>
internal static class Fish
{
    /// <summary>The script.</summary>
    public static string Of(IReadOnlyList<VerbTable> verbs)
    {
        var text = new StringBuilder("# What trimout takes, for fish. Made by: trimout completion fish\ncomplete -c trimout -f\n");
        foreach (var verb in verbs)
            text.Append(CultureInfo.InvariantCulture, $"complete -c trimout -n __fish_use_subcommand -a {verb.Name} -d {Quoted(verb.About)}\n");
        foreach (var verb in verbs)
        {
            var within = $"complete -c trimout -n '__fish_seen_subcommand_from {verb.Name}'";
            if (verb.Values.Any(v => v.IsPath))
                text.Append(CultureInfo.InvariantCulture, $"{within} -F\n");
            foreach (var value in verb.Values.Where(v => v.Words.Count > 0))
                text.Append(CultureInfo.InvariantCulture, $"{within} -a {Quoted(string.Join(' ', value.Words))} -d {Quoted(value.Called)}\n");
            foreach (var option in verb.Options)
                text.Append(CultureInfo.InvariantCulture, $"{within} {Named(option.Name)}{Taken(option.Value)} -d {Quoted(option.About)}\n");
        }
        return text.ToString();
    }

    private static string Named(string option) =>
        option.StartsWith("--", StringComparison.Ordinal) ? $"-l {option[2..]}" : $"-s {option[1..]}";

    private static string Taken(VerbTable.Value? value) => value switch
    {
        null => "",
        { Words.Count: > 0 } => $" -x -a {Quoted(string.Join(' ', value.Words))}",
        { IsPath: true } => " -r -F",
        _ => " -x",
    };

    private static string Quoted(string text) => $"'{text.Replace("\\", "\\\\", StringComparison.Ordinal).Replace("'", "\\'", StringComparison.Ordinal)}'";
}
