using System.Reflection;
using System.Text.RegularExpressions;
using TrimOut.Core.Checks;
using TrimOut.Core.History;
using TrimOut.Core.Wording;

namespace TrimOut.Testing;

/// <summary>All that checks say something with, gathered from the code; what of it is only a mend or a missing fact is read from the source.</summary>
public static partial class CheckMessages
{
    /// <summary>The classes.</summary>
    public static IEnumerable<Type> Classes => typeof(ICheck).Assembly.GetTypes().Where(t =>
        t.Namespace?.StartsWith(typeof(ICheck).Namespace!, StringComparison.Ordinal) == true || t == typeof(RemovedAtWork) || t == typeof(Disagreement));

    /// <summary>The messages of a class, by the names of their fields.</summary>
    public static IEnumerable<(string Name, Message Message)> Of(Type type) => type.ContainsGenericParameters ? [] : type
        .GetFields(BindingFlags.Static | BindingFlags.Public | BindingFlags.NonPublic | BindingFlags.DeclaredOnly)
        .Where(f => f.FieldType == typeof(Message)).Select(f => (f.Name, (Message)f.GetValue(null)!));

    /// <summary>Messages that are not only a mend or a missing fact: what is found, and parts of that.</summary>
    public static IEnumerable<(string Name, Message Message)> Found(Type type)
    {
        var messages = Of(type).ToList();
        if (messages.Count == 0)
            return [];
        var source = File.ReadAllText(Directory.EnumerateFiles(Path.Combine(Repository.Root, "src", "TrimOut.Core"), type.Name + ".cs",
            SearchOption.AllDirectories).Single());
        var others = Calls(source, "new Outcome.Found(").Select(a => a[1]).Concat(Calls(source, "new Outcome.NotChecked(").Select(a => a[0]))
            .SelectMany(a => Word().Matches(a).Select(m => m.Value)).ToHashSet(StringComparer.Ordinal);
        return messages.Where(m => !others.Contains(m.Name));
    }

    /// <summary>The messages of a sentence: its own, and those of all parts of it.</summary>
    public static IEnumerable<Message> In(Sentence sentence) => sentence.Args.SelectMany(In).Prepend(sentence.Message);

    private static IEnumerable<Message> In(Arg arg) => arg switch
    {
        SentenceArg part => In(part.Sentence),
        ListArg list => list.Args.SelectMany(In),
        StandsForArg shown => In(shown.Shown),
        _ => [],
    };

    /// <summary>The arguments of each call.</summary>
    private static IEnumerable<List<string>> Calls(string source, string call)
    {
        for (var at = source.IndexOf(call, StringComparison.Ordinal); at >= 0; at = source.IndexOf(call, at + 1, StringComparison.Ordinal))
        {
            var (depth, arguments, begin, quoted) = (0, new List<string>(), at + call.Length, false);
            for (var end = begin; depth >= 0; end++)
            {
                quoted ^= source[end] == '"' && source[end - 1] != '\\';
                if (quoted)
                    continue;
                depth += source[end] switch { '(' or '[' or '{' => 1, ')' or ']' or '}' => -1, _ => 0 };
                if (depth < 0 || (depth == 0 && source[end] == ','))
                {
                    arguments.Add(source[begin..end]);
                    begin = end + 1;
                }
            }
            yield return arguments;
        }
    }

    [GeneratedRegex(@"\w+")]
    private static partial Regex Word();
}
