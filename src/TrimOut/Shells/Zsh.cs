using System.Globalization;
using System.Text;

namespace TrimOut.Shells;

/// <summary>Completion for zsh.</summary>
internal static class Zsh
{
    /// <summary>The script.</summary>
    public static string Of(IReadOnlyList<VerbTable> verbs)
    {
        var text = new StringBuilder("""
            #compdef trimout
            # What trimout takes, for zsh. Made by: trimout completion zsh
            _trimout() {
                local -a verbs
                if (( CURRENT == 2 )); then
                    verbs=(

            """);
        foreach (var verb in verbs)
            text.Append(CultureInfo.InvariantCulture, $"            {Quoted($"{verb.Name}:{verb.About}")}\n");
        text.Append("""
                    )
                    _describe -t commands command verbs
                    return
                fi
                local verb=$words[2]
                shift words
                (( CURRENT-- ))
                case $verb in

            """);
        foreach (var verb in verbs)
        {
            text.Append(CultureInfo.InvariantCulture, $"        {verb.Name})\n            _arguments");
            foreach (var option in verb.Options)
            {
                var taken = option.Value is { } value ? Taken(value) : "";
                text.Append(CultureInfo.InvariantCulture, $" \\\n                {Quoted($"*{option.Name}[{Plain(option.About)}]{taken}")}");
            }
            foreach (var (value, at) in verb.Values.Select((v, n) => (v, n + 1)))
                text.Append(CultureInfo.InvariantCulture, $" \\\n                {Quoted($"{at}{Taken(value)}")}");
            text.Append("\n            ;;\n");
        }
        return text.Append("""
                esac
            }
            if [ "$funcstack[1]" = _trimout ]; then _trimout "$@"; else compdef _trimout trimout; fi

            """).ToString();
    }

    private static string Taken(VerbTable.Value value) =>
        $":{Plain(value.Called)}:{(value.Words.Count > 0 ? $"({string.Join(' ', value.Words)})" : value.IsPath ? "_files" : " ")}";

    private static string Plain(string text) =>
        text.Replace("\\", "\\\\", StringComparison.Ordinal).Replace("[", "\\[", StringComparison.Ordinal)
            .Replace("]", "\\]", StringComparison.Ordinal).Replace(":", "\\:", StringComparison.Ordinal);

    private static string Quoted(string text) => $"'{text.Replace("'", "'\\''", StringComparison.Ordinal)}'";
}
