using System.CommandLine;
using System.CommandLine.Completions;
using TrimOut.Papers;

namespace TrimOut.Shells;

/// <summary>The verbs as a shell has to know them: made from the command line itself, so that none is missing.</summary>
/// <param name="Name">What is typed.</param>
/// <param name="About">One sentence.</param>
/// <param name="Options">Its options.</param>
/// <param name="Values">What its arguments may be.</param>
internal sealed record VerbTable(string Name, string About, IReadOnlyList<VerbTable.Option> Options, IReadOnlyList<VerbTable.Value> Values)
{
    /// <summary>An option of a verb.</summary>
    /// <param name="Name">With its dashes.</param>
    /// <param name="About">One sentence.</param>
    /// <param name="Value">What comes behind it; null where nothing does.</param>
    internal sealed record Option(string Name, string About, Value? Value);

    /// <summary>What may be typed.</summary>
    /// <param name="Called">How the help calls it.</param>
    /// <param name="IsPath">Whether it may be a file or a folder.</param>
    /// <param name="Words">The words that there are; none where it is free.</param>
    internal sealed record Value(string Called, bool IsPath, IReadOnlyList<string> Words);

    private static readonly string[] Paths = ["HOUSE", "PATH", "OTHER", "FROM", "DAMAGED", "SCHEDULE", "FILE", "file", "folder"];

    /// <summary>All verbs of a command line, in its order.</summary>
    public static IReadOnlyList<VerbTable> Of(RootCommand root) => [.. root.Subcommands.Where(c => !c.Hidden).Select(verb => new VerbTable(verb.Name,
        verb.Description!,
        [.. Whole(verb).SelectMany(Of).DistinctBy(o => o.Name)],
        [.. Parts(verb), .. Whole(verb).SelectMany(c => c.Arguments).Select(a => ValueOf(a.Name, [.. WordsOf(a)], root))]))];

    /// <summary>The options of a verb.</summary>
    public static IReadOnlyList<Option> Of(Command verb) =>
        [.. verb.Options.Where(o => !o.Hidden).Select(o => new Option(o.Name, o.Description!, ValueOf(o)))];

    /// <summary>A verb and those that stand behind it.</summary>
    private static IEnumerable<Command> Whole(Command verb) => [verb, .. verb.Subcommands];

    private static IEnumerable<Value> Parts(Command verb) =>
        verb.Subcommands.Count == 0 ? [] : [new Value("COMMAND", false, [.. verb.Subcommands.Select(c => c.Name)])];

    private static Value? ValueOf(System.CommandLine.Option option) =>
        option.Arity.MaximumNumberOfValues == 0 || option.ValueType == typeof(bool) ? null
            : ValueOf(option.HelpName ?? option.Name.TrimStart('-'), [.. WordsOf(option)], null);

    private static Value ValueOf(string called, IReadOnlyList<string> words, RootCommand? root) => new(called, Paths.Contains(called),
        words.Count > 0 ? words : called switch
        {
            "PAPER" => [.. PaperList.All.Select(p => p.Id)],
            "COMMAND" => [.. root!.Subcommands.Select(c => c.Name)],
            "language" => ["de", "es"],
            _ => [],
        });

    private static IEnumerable<string> WordsOf(Symbol symbol) => symbol.GetCompletions(CompletionContext.Empty).Select(c => c.Label);
}
