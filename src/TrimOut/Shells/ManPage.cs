using System.CommandLine;
using System.Globalization;
using System.Text;

namespace TrimOut.Shells;

/// <summary>The manual page, from the words of the help (man(7) of groff).</summary>
internal static class ManPage
{
    /// <summary>The page of a command line.</summary>
    /// <param name="root">The command line.</param>
    /// <param name="version">The version of the program.</param>
    public static string Of(RootCommand root, string version)
    {
        var page = new StringBuilder();
        page.Append(CultureInfo.InvariantCulture, $".TH TRIMOUT 1 \"\" {Quoted($"TrimOut {version}")} {Quoted("User commands")}\n");
        page.Append(".SH NAME\ntrimout \\- tracks the fitting of wired motorized window coverings\n");
        page.Append(".SH SYNOPSIS\n.B trimout\n[\\fIcommand\\fR [\\fIarguments\\fR] [\\fIoptions\\fR]]\n.SH DESCRIPTION\n");
        foreach (var part in CommandLine.About.Split("\n\n"))
            page.Append(".PP\n").Append(Text(part)).Append('\n');
        page.Append(".SH COMMANDS\n");
        foreach (var verb in root.Subcommands.Where(v => !v.Hidden))
            Verb(page, verb, $"trimout {verb.Name}");
        page.Append(".SH \"EXIT STATUS\"\n");
        foreach (var (code, meaning) in ExitCode.All)
            page.Append(CultureInfo.InvariantCulture, $".TP\n.B {code}\n{Text(meaning)}\n");
        return page.ToString();
    }

    private static void Verb(StringBuilder page, Command verb, string typed)
    {
        page.Append(".SS ").Append(Quoted(string.Join(' ', [typed, .. verb.Arguments.Select(a =>
            a.Arity.MinimumNumberOfValues == 0 ? $"[{a.Name}]" : a.Name)]))).Append('\n');
        page.Append(Text(verb.Description!)).Append('\n');
        foreach (var argument in verb.Arguments)
            page.Append(".TP\n.I ").Append(Text(argument.Name)).Append('\n').Append(Text(argument.Description!)).Append('\n');
        foreach (var option in VerbTable.Of(verb))
        {
            var value = option.Value is { } takes ? $" \\fI{Text(takes.Called)}\\fR" : "";
            page.Append(CultureInfo.InvariantCulture, $".TP\n\\fB{Text(option.Name)}\\fR{value}\n{Text(option.About)}\n");
        }
        foreach (var part in verb.Subcommands)
            Verb(page, part, $"{typed} {part.Name}");
    }

    /// <summary>A text as it stands: no sign of it acts, and no line of it is taken for a request.</summary>
    private static string Text(string text)
    {
        var plain = text.Replace("\\", "\\e", StringComparison.Ordinal).Replace("-", "\\-", StringComparison.Ordinal)
            .Replace("\n", "\n.br\n", StringComparison.Ordinal);
        return plain.StartsWith('.') || plain.StartsWith('\'') ? $"\\&{plain}" : plain;
    }

    private static string Quoted(string text) => $"\"{Text(text).Replace("\"", "\\(dq", StringComparison.Ordinal)}\"";
}
