using System.Text;

namespace TrimOut.Shells;

/// <summary>Completion for bash.</summary>
internal static class Bash
{
    /// <summary>The script.</summary>
    public static string Of(IReadOnlyList<VerbTable> verbs)
    {
        var text = new StringBuilder("""
            # What trimout takes, for bash. Made by: trimout completion bash
            _trimout() {
                local word=${COMP_WORDS[COMP_CWORD]} last=${COMP_WORDS[COMP_CWORD-1]} verb='' words='' paths=''
                [ "$COMP_CWORD" -gt 1 ] && verb=${COMP_WORDS[1]}
                COMPREPLY=()
                case "$verb $last" in

            """);
        foreach (var verb in verbs)
        {
            foreach (var option in verb.Options)
            {
                if (option.Value is { } value)
                    text.Append(Case($"\"{verb.Name} {option.Name}\"", value.Words, value.IsPath, 1));
            }
        }
        text.Append("""
                *)
                    case "$verb" in

            """);
        text.Append(Case("''", verbs.Select(v => v.Name), false, 2));
        foreach (var verb in verbs)
        {
            text.Append(Case(verb.Name, verb.Options.Select(o => o.Name).Concat(verb.Values.SelectMany(v => v.Words)), verb.Values.Any(v => v.IsPath), 2));
        }
        return text.Append("""
                    esac
                    ;;
                esac
                mapfile -t COMPREPLY < <(compgen -W "$words" -- "$word"; [ -n "$paths" ] && [[ "$word" != -* ]] && compgen -f -- "$word")
                [ -n "$paths" ] && compopt -o filenames 2> /dev/null
                return 0
            }
            complete -F _trimout trimout

            """).ToString();
    }

    private static string Case(string when, IEnumerable<string> words, bool paths, int depth) =>
        $"{new string(' ', 4 * depth)}{when}) words='{string.Join(' ', words)}'{(paths ? " paths=1" : "")} ;;\n";
}
