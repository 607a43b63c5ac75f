using System.Globalization;
using System.Text;

namespace TrimOut.Shells;

/// <summary>Completion for PowerShell.</summary>
internal static class PowerShell
{
    /// <summary>The script.</summary>
    public static string Of(IReadOnlyList<VerbTable> verbs)
    {
        var text = new StringBuilder("""
            # What trimout takes, for PowerShell. Made by: trimout completion powershell
            Register-ArgumentCompleter -Native -CommandName trimout -ScriptBlock {
                param($word, $line, $at)
                $verbs = [ordered]@{

            """);
        foreach (var verb in verbs)
            text.Append(CultureInfo.InvariantCulture, $"        {Quoted(verb.Name)} = {Quoted(verb.About)}\n");
        text.Append("    }\n    $options = @{\n");
        foreach (var verb in verbs)
        {
            text.Append(CultureInfo.InvariantCulture, $"        {Quoted(verb.Name)} = [ordered]@{{\n");
            foreach (var option in verb.Options)
                text.Append(CultureInfo.InvariantCulture, $"            {Quoted(option.Name)} = {Quoted(option.About)}\n");
            foreach (var value in verb.Values)
            {
                foreach (var word in value.Words)
                    text.Append(CultureInfo.InvariantCulture, $"            {Quoted(word)} = {Quoted(value.Called)}\n");
            }
            text.Append("        }\n");
        }
        text.Append("    }\n    $values = @{\n");
        foreach (var verb in verbs)
        {
            foreach (var option in verb.Options.Where(o => o.Value?.Words.Count > 0))
            {
                var words = string.Join(", ", option.Value!.Words.Select(Quoted));
                text.Append(CultureInfo.InvariantCulture, $"        {Quoted($"{verb.Name} {option.Name}")} = {words}\n");
            }
        }
        return text.Append("""
                }
                $typed = @($line.CommandElements | Where-Object { $_.Extent.EndOffset -lt $at } | ForEach-Object { $_.ToString() })
                $verb = if ($typed.Count -gt 1) { $typed[1] } else { '' }
                $key = "$verb $($typed[-1])"
                $names = @{}
                $from = if ($values.ContainsKey($key)) { $values[$key] }
                    else { $names = if ($verb) { $options[$verb] } else { $verbs }; if ($names) { $names.Keys } }
                $from | Where-Object { $_ -like "$word*" } | ForEach-Object {
                    $about = if ($names[$_]) { $names[$_] } else { $_ }
                    [System.Management.Automation.CompletionResult]::new($_, $_, 'ParameterValue', $about)
                }
            }

            """).ToString();
    }

    private static string Quoted(string text) => $"'{text.Replace("'", "''", StringComparison.Ordinal)}'";
}
